package org.headhouse.linter.report.sheet;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Output of a page in which no line ends between a number and its unit: whoever reads {@code 120}
 * at the end of one line and {@code ohm} at the start of the next may take the number for another.
 */
final class PageOutput extends OwaspHtmlTemplateOutput {
  private static final Pattern QUANTITY =
      Pattern.compile(
          "[-−+]?\\d[\\d.,/]*[ \u00A0](?:kilo|milli)?(?:m?V|dB|k?ohm|m|mm|ft|in|m?s|µs|min|h|months|bit/s|bits?|"
              + "AWG|pF|nF|%|°[CF]|degC|degF|m/s|km/h|mph|kn)(?![\\p{L}\\p{N}])");

  /** Where an element would be text, or text is copied to somewhere else. */
  private static final Set<String> PLAIN = Set.of("title", "style", "code", "pre", "textarea");

  private boolean isProse = true;

  PageOutput(StringOutput out) {
    super(out);
  }

  @Override
  public void setContext(String tag, @Nullable String attribute) {
    super.setContext(tag, attribute);
    isProse = attribute == null && !PLAIN.contains(tag);
  }

  @Override
  public void writeUserContent(@Nullable String text) {
    if (!isProse || text == null) {
      super.writeUserContent(text);
      return;
    }
    Matcher quantity = QUANTITY.matcher(text);
    int from = 0;
    while (quantity.find()) {
      super.writeUserContent(text.substring(from, quantity.start()));
      writeContent("<span class=\"q\">");
      super.writeUserContent(quantity.group());
      writeContent("</span>");
      from = quantity.end();
    }
    super.writeUserContent(text.substring(from));
  }
}
