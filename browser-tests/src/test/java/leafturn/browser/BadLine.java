package leafturn.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/**
 * A line to a server that can break at the worst moment: after an entry was sent, before its answer
 * is back. It passes bytes on and looks into them only for the first line of a request, and to put
 * the server's port in place of its own.
 */
final class BadLine implements AutoCloseable {
  /** What becomes of an entry on its way. */
  enum Way {
    /** It arrives, and its answer too. */
    THROUGH,

    /** It arrives and is answered; the answer is lost. */
    ANSWER_LOST,

    /** It arrives, and at that moment the power goes. */
    POWER_CUT
  }

  private static final String ENTRY = "POST /queue ";
  private static final int PACKET = 65_536;

  private final ServerSocket listening;
  private final int server;
  private final Runnable powerCut;
  private volatile Way way = Way.THROUGH;
  private volatile int entries;

  /**
   * @param server port of the server
   * @param powerCut ends the server
   */
  BadLine(int server, Runnable powerCut) throws IOException {
    this.server = server;
    this.powerCut = powerCut;
    this.listening = new ServerSocket(ServedBook.freePort(), 50, InetAddress.getLoopbackAddress());
    inBackground(this::listen);
  }

  void become(Way next) {
    way = next;
  }

  /** How many entries were sent over it. */
  int entries() {
    return entries;
  }

  String url(String path) {
    return "http://127.0.0.1:" + listening.getLocalPort() + path;
  }

  private void listen() throws IOException {
    while (!listening.isClosed()) {
      Socket browser = listening.accept();
      inBackground(() -> connect(browser));
    }
  }

  private void connect(Socket browser) throws IOException {
    try (browser;
        Socket there = new Socket(InetAddress.getLoopbackAddress(), server)) {
      Line line = new Line(browser, there);
      inBackground(line::bringBack);
      line.send();
    }
  }

  /** One connection. */
  private final class Line {
    private final Socket browser;
    private final Socket there;
    private volatile boolean carriesEntry;

    Line(Socket browser, Socket there) {
      this.browser = browser;
      this.there = there;
    }

    void send() throws IOException {
      InputStream from = browser.getInputStream();
      OutputStream to = there.getOutputStream();
      byte[] packet = new byte[PACKET];
      for (int length = from.read(packet); length > 0; length = from.read(packet)) {
        String text = new String(packet, 0, length, StandardCharsets.ISO_8859_1);
        if (text.startsWith(ENTRY)) {
          entries++;
          carriesEntry = true;
        }
        String ours = ":" + listening.getLocalPort();
        to.write(text.replace(ours, ":" + server).getBytes(StandardCharsets.ISO_8859_1));
        to.flush();
        if (carriesEntry && way == Way.POWER_CUT && text.endsWith("--\r\n")) {
          powerCut.run();
          browser.close();
        }
      }
    }

    void bringBack() throws IOException {
      InputStream from = there.getInputStream();
      OutputStream to = browser.getOutputStream();
      byte[] packet = new byte[PACKET];
      for (int length = from.read(packet); length > 0; length = from.read(packet)) {
        if (carriesEntry && way != Way.THROUGH) {
          browser.close();
          return;
        }
        to.write(packet, 0, length);
        to.flush();
      }
      browser.close();
    }
  }

  private interface Work {
    void run() throws IOException;
  }

  /** A connection that breaks is what this class is for, and no fault. */
  private static void inBackground(Work work) {
    Thread thread =
        new Thread(
            () -> {
              try {
                work.run();
              } catch (IOException | UncheckedIOException broken) {
                Thread.currentThread().interrupt();
              }
            });
    thread.setDaemon(true);
    thread.start();
  }

  @Override
  public void close() throws IOException {
    listening.close();
  }
}
