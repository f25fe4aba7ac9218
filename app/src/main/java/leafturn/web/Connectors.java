package leafturn.web;

import io.javalin.config.JavalinConfig;
import java.net.InetAddress;
import org.eclipse.jetty.server.ConnectionFactory;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/** Makes the server listen where and how it should. */
final class Connectors {
  private static final long IDLE_MS = 30_000;

  private Connectors() {}

  static void set(JavalinConfig config, Listening listening) {
    config.jetty.addConnector((server, http) -> connector(server, http, listening));
  }

  private static ServerConnector connector(
      Server server, HttpConfiguration http, Listening listening) {
    TlsFiles tls = listening.tls();
    ServerConnector connector =
        new ServerConnector(
            server,
            tls == null
                ? new ConnectionFactory[] {new HttpConnectionFactory(http)}
                : overTls(http, tls));
    InetAddress address = listening.address();
    connector.setHost(address.getHostAddress());
    connector.setPort(listening.port());
    connector.setIdleTimeout(IDLE_MS);
    return connector;
  }

  private static ConnectionFactory[] overTls(HttpConfiguration http, TlsFiles tls) {
    SslContextFactory.Server context = new SslContextFactory.Server();
    context.setKeyStore(tls.store());
    context.setKeyStorePassword("");
    HttpConfiguration secure = new HttpConfiguration(http);
    // The host is checked by our own guard, which also knows the names given with --host.
    secure.addCustomizer(new SecureRequestCustomizer(false));
    return new ConnectionFactory[] {
      new SslConnectionFactory(context, "http/1.1"), new HttpConnectionFactory(secure)
    };
  }
}
