import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import org.neo4j.configuration.GraphDatabaseSettings;
import org.neo4j.configuration.connectors.BoltConnector;
import org.neo4j.configuration.helpers.SocketAddress;
import org.neo4j.dbms.api.DatabaseManagementService;
import org.neo4j.dbms.api.DatabaseManagementServiceBuilder;
import org.neo4j.io.ByteUnit;

/**
 * A Neo4j server for tests: `java -cp "<jars>/*" TestServer.java <home folder> <port>`, with the password of the user
 * neo4j in TEST_PASSWORD. Prints "ready" when it answers, and ends when its standard input does: it does not outlive
 * whoever started it.
 */
class TestServer {
  public static void main(String[] arguments) throws Exception {
    var home = Path.of(arguments[0]);
    var address = new SocketAddress("127.0.0.1", Integer.parseInt(arguments[1]));
    var server = start(home, address);
    setPassword(server, System.getenv("TEST_PASSWORD"));
    System.out.println("ready");
    while (System.in.read() >= 0);
    // What is left in the home folder is thrown away: an orderly shutdown would take ten seconds for nothing.
    Runtime.getRuntime().halt(0);
  }

  private static DatabaseManagementService start(Path home, SocketAddress address) {
    return new DatabaseManagementServiceBuilder(home)
        .setConfig(BoltConnector.enabled, true)
        .setConfig(BoltConnector.listen_address, address)
        .setConfig(BoltConnector.advertised_address, address)
        .setConfig(GraphDatabaseSettings.auth_enabled, true)
        .setConfig(GraphDatabaseSettings.pagecache_memory, ByteUnit.mebiBytes(256))
        .setConfig(GraphDatabaseSettings.preallocate_logical_logs, false)
        // Stores of tests are emptied again and again: plans would be made anew each time.
        .setConfig(GraphDatabaseSettings.cypher_min_replan_interval, Duration.ofDays(1))
        .build();
  }

  private static void setPassword(DatabaseManagementService server, String password) {
    server
        .database(GraphDatabaseSettings.SYSTEM_DATABASE_NAME)
        .executeTransactionally(
            "CREATE OR REPLACE USER neo4j SET PASSWORD $password CHANGE NOT REQUIRED", Map.of("password", password));
  }
}
