package leafturn.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import leafturn.advice.call.RoundOfLawns;

/** Fills the templates. */
final class Pages {
  private static final String TEMPLATES = "gg.jte.generated.precompiled";

  private final TemplateEngine engine =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, TEMPLATES);
  private final RoundOfLawns round;
  private final Assets assets;

  Pages(RoundOfLawns round, Assets assets) {
    this.round = round;
    this.assets = assets;
  }

  String round() {
    return filled("round.jte", "Round", Map.of("page", new RoundPage(round)));
  }

  String lawns() {
    return filled("lawns.jte", "Lawns", Map.of());
  }

  Optional<String> lawn(String slug) {
    return round
        .lawn(slug)
        .map(
            lawn ->
                filled(
                    "lawn.jte",
                    lawn.lawnName() + ", " + lawn.propertyName(),
                    Map.of("page", new LawnPage(lawn))));
  }

  String sources() {
    return filled("sources.jte", "Sources", Map.of("page", SourcesPage.ofTheModel()));
  }

  String notFound() {
    return message(
        "There is no page at this address.",
        "It may have been mistyped, or the lawn may have left the round.");
  }

  String fault() {
    return message(
        "This page could not be made.",
        "The fault is ours and has been written to the log; nothing you entered is lost.");
  }

  private String message(String headline, String more) {
    return filled("message.jte", headline, Map.of("headline", headline, "more", more));
  }

  private String filled(String template, String title, Map<String, Object> content) {
    Map<String, Object> parameters = new HashMap<>(content);
    parameters.put("frame", new Frame(title, round, assets));
    StringOutput output = new StringOutput();
    engine.render(template, parameters, output);
    return output.toString();
  }
}
