import { describeWithNeo4j } from '../../support/neo4j/describe-with-neo4j.ts';
import { emptyNeo4jStore } from '../../support/neo4j/empty-neo4j-store.ts';
import { describeLaws, describeStore } from '../contract/describe-store.ts';
import { searchFilterLaws } from '../contract/search-filter-laws.ts';

describeWithNeo4j('Neo4j', () => {
  describeStore('the store in a Neo4j database', () => emptyNeo4jStore());

  describeLaws('a store in a Neo4j database where every filter passes many', searchFilterLaws, () =>
    emptyNeo4jStore({ gathered: 0 }),
  );
});
