/** Loaded before each file of tests that needs the server: what it leaves open is closed at the end of the file. */
import './empty-neo4j-store.ts';
