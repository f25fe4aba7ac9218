package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import leafturn.records.sheet.Kind;

/** Tests that add sheets to Heron Bank, a property of the demonstration, or to its play lawn. */
abstract class HeronBankSite extends DemoSite {
  /** Where the form of a new sheet is asked for and sent to. */
  static final String ADD = "/sheets/new";

  /** The id of what a sheet belongs to: "lawn" or "property", as the form names it. */
  final String owner(String kind) {
    return kind.equals("lawn")
        ? book.read(reading -> reading.at(Kind.LAWN, "heron-bank-play")).orElseThrow().id()
        : book.read(reading -> reading.at(Kind.PROPERTY, "heron-bank")).orElseThrow().id();
  }

  /** What the form of a new sheet sends, with an id of its own unless one is given; changeable. */
  final Map<String, String> owned(String kind, String owner, Map<String, String> given) {
    Map<String, String> fields = new HashMap<>(given);
    fields.put("kind", kind);
    fields.putIfAbsent("id", UUID.randomUUID().toString());
    fields.put(owner, owner(owner));
    return fields;
  }

  /** Sends the form of a new sheet. */
  final HttpResponse<String> send(String kind, String owner, Map<String, String> given)
      throws Exception {
    String form = ADD + "?kind=" + kind + "&" + owner + "=" + owner(owner);
    return visitor.send(form, ADD, owned(kind, owner, given));
  }

  /** Adds a sheet; its address. */
  final String added(String kind, String owner, Map<String, String> given) throws Exception {
    HttpResponse<String> answer = send(kind, owner, given);
    assertThat(answer.statusCode()).as(kind).isEqualTo(303);
    return answer.headers().firstValue("Location").orElseThrow();
  }
}
