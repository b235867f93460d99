// A general-purpose GraphQL layer over the database of our engine: `node server.mjs <address of the database>`. Claims are
// nodes, as they are stored; `sources` and `copies` go over the derived relationship, which has the id of the claim alone.
// The label Row is named because what is looked for by id has its index there.
import { createServer } from 'node:http';
import { Neo4jGraphQL } from '@neo4j/graphql';
import { createYoga } from 'graphql-yoga';
import neo4j from 'neo4j-driver';

const typeDefs = /* GraphQL */ `
  type Picture @node(labels: ["Row"]) {
    id: ID!
    kind: String!
    caption: String
    labels: String
    copiedFrom: [Copying!]! @relationship(type: "COPYING_COPY", direction: IN)
    copiedAs: [Copying!]! @relationship(type: "COPYING_SOURCE", direction: IN)
    sources: [Picture!]! @relationship(type: "STEP_COPYING", direction: OUT, properties: "Step")
    copies: [Picture!]! @relationship(type: "STEP_COPYING", direction: IN, properties: "Step")
    appearances: [Appearance!]! @relationship(type: "APPEARANCE_PLATE", direction: IN)
    datings: [Dating!]! @relationship(type: "DATING_OF", direction: IN)
    pieces: [Piece!]! @relationship(type: "MOTIF_PIECE", direction: OUT)
  }
  type Step @relationshipProperties {
    claim: ID!
  }
  type Copying @node {
    id: ID!
    handedness: String
    certainty: String
    copy: [Picture!]! @relationship(type: "COPYING_COPY", direction: OUT)
    source: [Picture!]! @relationship(type: "COPYING_SOURCE", direction: OUT)
  }
  type Appearance @node {
    id: ID!
    presence: String
    number: String
    plate: [Picture!]! @relationship(type: "APPEARANCE_PLATE", direction: OUT)
    edition: [Edition!]! @relationship(type: "APPEARANCE_EDITION", direction: OUT)
  }
  type Edition @node(labels: ["Row"]) {
    id: ID!
    title: String
    imprint: String
    languages: String
    work: [Work!]! @relationship(type: "EDITION_WORK", direction: OUT)
    imprints: [Imprint!]! @relationship(type: "IMPRINT_EDITION", direction: IN)
    datings: [Dating!]! @relationship(type: "DATING_OF", direction: IN)
    appearances: [Appearance!]! @relationship(type: "APPEARANCE_EDITION", direction: IN)
  }
  type Work @node {
    id: ID!
    labels: String
    form: String
  }
  type Imprint @node {
    id: ID!
    role: String
    place: [Place!]! @relationship(type: "IMPRINT_PLACE", direction: OUT)
  }
  type Place @node {
    id: ID!
    labels: String
  }
  type Piece @node {
    id: ID!
    labels: String
    datings: [Dating!]! @relationship(type: "DATING_OF", direction: IN)
  }
  type Dating @node {
    id: ID!
    event: String
    date: String
    basis: String
  }
`;

const driver = neo4j.driver(process.argv[2], undefined, { maxConnectionPoolSize: 16, fetchSize: 10_000 });
const schema = await new Neo4jGraphQL({ typeDefs, driver }).getSchema();
const yoga = createYoga({ schema, logging: 'error', graphiql: false, context: { executionContext: driver } });
const server = createServer(yoga).listen(0, '127.0.0.1', () => {
  process.stdout.write(`at http://127.0.0.1:${server.address().port}/graphql\n`);
});
