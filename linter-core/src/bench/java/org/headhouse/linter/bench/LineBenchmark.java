package org.headhouse.linter.bench;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.concurrent.TimeUnit;
import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.figures.SiteFigures;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.YamlReader;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One operation is one site of as many units as a line can have addresses. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class LineBenchmark {
  private static final int UNITS = 247;

  private SourceText text = new SourceText("site-0.yaml", "");
  private @Nullable Site site;

  /** Makes the site. */
  @Setup
  public void makeSite() {
    text = new SourceText("site-0.yaml", new String(Corpus.sites(1, UNITS).get(0), UTF_8));
    Node.Valued root = read().root();
    if (root == null) {
      throw new IllegalStateException("the site cannot be read");
    }
    site = SiteBinder.bind(text, root, DeviceTypes.NONE).model();
  }

  /** From the text to the located tree. */
  @Benchmark
  public Document read() {
    return new YamlReader(Limits.DEFAULT).read(text);
  }

  /** All figures of the line. */
  @Benchmark
  public SiteFigures figures() {
    if (site == null) {
      throw new IllegalStateException("the site was not made");
    }
    return SiteFigures.of(site, SitePolicy.DEFAULT);
  }
}
