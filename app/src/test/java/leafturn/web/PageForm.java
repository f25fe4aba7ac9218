package leafturn.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A form as it stands in one of our pages.
 *
 * @param action where it is sent
 * @param sends true for POST
 * @param fields its fields with their values
 * @param textFields names of those that take any text
 */
record PageForm(String action, boolean sends, Map<String, String> fields, List<String> textFields) {
  private static final Pattern FORM = Pattern.compile("(?s)<form([^>]*)>(.*?)</form>");
  private static final Pattern FIELD =
      Pattern.compile("(?s)<(input|textarea|select)([^>]*)>(.*?)(?=<input|<textarea|<select|$)");
  private static final Pattern CHOSEN = Pattern.compile("<option value=\"([^\"]*)\"[^>]*selected");
  private static final Pattern OPTION = Pattern.compile("<option value=\"([^\"]*)\"");
  private static final Pattern LINK = Pattern.compile("<a [^>]*href=\"(/[^\"#]*)");
  private static final Set<String> ANY_TEXT = Set.of("", "text", "search", "tel", "url", "hidden");

  /** The forms of a page. */
  static List<PageForm> in(String page) {
    List<PageForm> forms = new ArrayList<>();
    Matcher form = FORM.matcher(page);
    while (form.find()) {
      forms.add(read(form.group(1), form.group(2)));
    }
    return forms;
  }

  /** Where the links of a page lead within the site. */
  static Set<String> links(String page) {
    Set<String> links = new LinkedHashSet<>();
    Matcher link = LINK.matcher(page);
    while (link.find()) {
      links.add(plain(link.group(1)));
    }
    return links;
  }

  private static PageForm read(String attributes, String content) {
    Map<String, String> fields = new LinkedHashMap<>();
    List<String> texts = new ArrayList<>();
    Matcher field = FIELD.matcher(content);
    while (field.find()) {
      String name = attribute(field.group(2), "name");
      if (name.isEmpty()) {
        continue;
      }
      String type = attribute(field.group(2), "type");
      if (field.group(1).equals("select")) {
        fields.put(name, chosen(field.group(3)));
        texts.add(name);
      } else if (field.group(1).equals("textarea")) {
        fields.put(name, plain(field.group(3).replaceFirst("(?s)</textarea>.*", "")));
        texts.add(name);
      } else if (type.equals("checkbox") || type.equals("radio")) {
        if (field.group(2).contains("checked")) {
          fields.put(name, attribute(field.group(2), "value"));
        }
      } else {
        fields.put(name, attribute(field.group(2), "value"));
        if (ANY_TEXT.contains(type) && !name.equals("_token")) {
          texts.add(name);
        }
      }
    }
    String action = plain(attribute(attributes, "action"));
    return new PageForm(
        action, attribute(attributes, "method").equalsIgnoreCase("post"), fields, texts);
  }

  private static String chosen(String options) {
    Matcher chosen = CHOSEN.matcher(options);
    if (chosen.find()) {
      return plain(chosen.group(1));
    }
    Matcher first = OPTION.matcher(options);
    return first.find() ? plain(first.group(1)) : "";
  }

  private static String attribute(String attributes, String name) {
    Matcher found = Pattern.compile("\\b" + name + "=\"([^\"]*)\"").matcher(attributes);
    return found.find() ? plain(found.group(1)) : "";
  }

  private static String plain(String html) {
    return html.replace("&#34;", "\"")
        .replace("&#39;", "'")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&amp;", "&");
  }
}
