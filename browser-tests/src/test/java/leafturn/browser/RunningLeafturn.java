package leafturn.browser;

import java.net.URI;
import leafturn.web.LeafturnServer;
import leafturn.web.SampleRound;

/** The server under test: the one place that says which one it is. */
record RunningLeafturn(URI address, AutoCloseable server) implements AutoCloseable {
  static RunningLeafturn start() {
    LeafturnServer server = LeafturnServer.start(SampleRound.get(), 0);
    return new RunningLeafturn(server.address(), server);
  }

  String url(String path) {
    return address.resolve(path).toString();
  }

  @Override
  public void close() throws Exception {
    server.close();
  }
}
