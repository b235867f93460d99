import { describeWithNeo4j } from '../../support/neo4j/describe-with-neo4j.ts';
import { emptyNeo4jStore } from '../../support/neo4j/empty-neo4j-store.ts';
import { describeStore } from '../contract/describe-store.ts';

describeWithNeo4j('Neo4j', () => {
  describeStore('the store in a Neo4j database', () => emptyNeo4jStore());
});
