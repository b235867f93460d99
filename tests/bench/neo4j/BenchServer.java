import java.nio.file.Path;
import org.neo4j.configuration.GraphDatabaseSettings;
import org.neo4j.configuration.connectors.BoltConnector;
import org.neo4j.configuration.helpers.SocketAddress;
import org.neo4j.dbms.api.DatabaseManagementServiceBuilder;
import org.neo4j.io.ByteUnit;

/**
 * A Neo4j server that keeps what it holds: `java -cp "<jars>/*" BenchServer.java <home folder> <port> <page cache, MiB>`, on
 * loopback and without passwords. Prints "ready" when it answers, and is shut down in order when its standard input ends.
 */
class BenchServer {
  public static void main(String[] arguments) throws Exception {
    var address = new SocketAddress("127.0.0.1", Integer.parseInt(arguments[1]));
    var server =
        new DatabaseManagementServiceBuilder(Path.of(arguments[0]))
            .setConfig(BoltConnector.enabled, true)
            .setConfig(BoltConnector.listen_address, address)
            .setConfig(BoltConnector.advertised_address, address)
            .setConfig(GraphDatabaseSettings.auth_enabled, false)
            .setConfig(GraphDatabaseSettings.pagecache_memory, ByteUnit.mebiBytes(Long.parseLong(arguments[2])))
            .build();
    System.out.println("ready");
    while (System.in.read() >= 0);
    server.shutdown();
  }
}
