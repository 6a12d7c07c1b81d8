package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.Written;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What the page on the proof of a line shows is what happens. */
class ProofPageTest {
  private static final Path PAGE = Path.of("docs/proof.md");

  private static String example(String name) throws IOException {
    Matcher matcher =
        Pattern.compile("<!-- example: " + name + " -->\n```yaml\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(PAGE));
    assertThat(matcher.find()).as("example %s", name).isTrue();
    return matcher.group(1);
  }

  /** The page with another output of that name. */
  private static String with(String page, String name, String output) {
    Matcher matcher =
        Pattern.compile("(<!-- output: " + name + " -->\n```[a-z]+\n).*?(```)", Pattern.DOTALL)
            .matcher(page);
    assertThat(matcher.find()).as("output %s", name).isTrue();
    return page.substring(0, matcher.end(1)) + output + page.substring(matcher.start(2));
  }

  private static String site(String record) throws IOException {
    return example("site").replace("stage: planned\n", record);
  }

  private static String proved(String serialNumber, String more) throws IOException {
    return site(example("record") + more)
        .replace("address: 3\n", "address: 3\n    serial-number: " + serialNumber + "\n");
  }

  private static String record() throws IOException {
    return Sheets.page(example("site"))
        .expectFirst("[aria-label=Commissioning record] pre")
        .wholeText();
  }

  private static List<Result> results(String site, String before) throws IOException {
    SiteLinter.Builder builder =
        SiteLinter.builder()
            .clock(Clock.fixed(Instant.parse("2026-11-02T10:00:00Z"), ZoneOffset.UTC));
    if (!before.isEmpty()) {
      builder.before(SiteState.of(Stream.of(SiteInput.text("alder-brook.yaml", before)), null));
    }
    return builder.build().checkText("alder-brook.yaml", site).results();
  }

  private static String lines(String site, String before) throws IOException {
    return results(site, before).stream()
        .map(result -> String.join("\n", TextReport.lines(result)) + "\n")
        .collect(Collectors.joining());
  }

  private static String withoutVents(String site) {
    return site.replaceAll("(?m)^    (vents|on-stale-readings): .*\n", "")
        .replaceAll("(?ms)^  storm-response-seen:.*?^(  stale)", "$1")
        .replaceAll("(?m)^  stale-response-seen: .*\n", "");
  }

  private static String withoutStorm(String renewed) {
    return renewed.replaceAll("(?m)^      storm-response-seen: .*\n", "");
  }

  @Test
  @Tag("written")
  void everyOutputIsTheRealOne() throws IOException {
    String exchanged = proved("HH-0107", "");
    String earlier = proved("HH-0042", "");
    String page = Files.readString(PAGE);
    page = with(page, "record", record());
    page = with(page, "untouched", lines(site(record()), ""));
    page = with(page, "without-vents", lines(withoutVents(site(example("record"))), ""));
    page = with(page, "exchanged", lines(exchanged, earlier));
    page =
        with(
            page,
            "incomplete",
            lines(proved("HH-0107", withoutStorm(example("renewed"))), earlier));
    Written.compare(PAGE, page);
  }

  @Test
  void whatIsPastedUntouchedFails() throws IOException {
    assertThat(results(site(record()), ""))
        .extracting(Result::rule)
        .contains(
            "commissioning.placeholder",
            "commissioning.unit-unseen",
            "commissioning.unmeasured",
            "commissioning.response-unseen");
    assertThat(results(withoutVents(site(example("record"))), ""))
        .extracting(Result::rule)
        .contains("commissioning.response-unseen");
  }

  @Test
  void theSiteAndItsRecordsAreSound() throws IOException {
    assertThat(results(example("site"), "")).isEmpty();
    assertThat(results(site(example("record")), "")).isEmpty();
    assertThat(results(proved("HH-0107", example("renewed")), proved("HH-0042", ""))).isEmpty();
  }

  @Test
  void theSuppressionAndThePolicyAreUnderstood() throws IOException {
    String unseen = site(example("record")).replaceAll("(?m)^  stale-response-seen: .*\n", "");
    assertThat(results(unseen + example("suppression"), ""))
        .allMatch(Result::suppressed)
        .hasSize(1);
    SiteLinter linter =
        SiteLinter.builder()
            .policy(SiteInput.text("linter.yaml", example("policy")))
            .clock(Clock.fixed(Instant.parse("2027-03-15T10:00:00Z"), ZoneOffset.UTC))
            .build();
    assertThat(linter.checkText("alder-brook.yaml", site(example("record"))).results())
        .extracting(Result::rule)
        .containsExactly("commissioning.retest-due");
  }
}
