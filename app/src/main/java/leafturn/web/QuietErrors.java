package leafturn.web;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Answers requests that the server cannot even read: in a sentence, with nothing of the inside. */
final class QuietErrors extends ErrorHandler {
  private static final int UNREADABLE = 400;
  private static final int VERSION_NOT_SPOKEN = 505;
  private static final Map<Integer, String> SENTENCES =
      Map.of(
          404, "There is no page at this address.",
          408, "The request took too long to come.",
          413, "This is too large.",
          414, "The address is too long.",
          431, "The request's head is too large.",
          500, "This page could not be made; the fault is ours.",
          503, "The site does not answer now; try again in a while.");

  @Override
  public boolean handle(Request request, Response response, Callback callback) {
    int status = response.getStatus();
    if (status == VERSION_NOT_SPOKEN) {
      // A garbled version is the sender's fault, and not that of the server.
      status = UNREADABLE;
      response.setStatus(status);
    }
    String sentence = SENTENCES.getOrDefault(status, "This request cannot be read.");
    response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/plain; charset=utf-8");
    response.getHeaders().put("X-Content-Type-Options", "nosniff");
    response.write(
        true, ByteBuffer.wrap((sentence + "\n").getBytes(StandardCharsets.UTF_8)), callback);
    return true;
  }
}
