package org.headhouse.linter.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.sheet.Sheets;
import org.junit.jupiter.api.Test;

/** The materials of two sample sites against sums by hand, each with its terms. */
class SampleMaterialsTest {
  private static final double EXACT = 1e-9;

  private static BillOfMaterials bill(String file) {
    List<BillOfMaterials> bills = new ArrayList<>();
    Path path = Sheets.SAMPLES.resolve("sites").resolve(file);
    Sheets.linter(1)
        .sheets(
            Stream.of(SiteInput.file(path)),
            Measure.METRIC,
            Paper.A4,
            sheet -> bills.add(sheet.materials().bill()));
    return bills.get(0);
  }

  private static MaterialCount count(BillOfMaterials bill, Material material, String type) {
    return bill.counts().stream()
        .filter(count -> count.material() == material && count.type().equals(type))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + material + " " + type + " in " + bill));
  }

  private static double pieces(BillOfMaterials bill, Material material, String type) {
    return Objects.requireNonNull(count(bill, material, type).amount());
  }

  @Test
  void twoBlocksWithARepeaterBetweenThem() {
    BillOfMaterials bill = bill("tarnwick.yaml");
    assertThat(bill.measure()).isEqualTo(Measure.METRIC);
    MaterialCount cable = count(bill, Material.CABLE, "22 AWG, shielded, 120 ohm, pair");
    // Lily West, Lily East, Stock West: 34 m each; Stock East, Bouquet Hall, Road Cabinet;
    // Freesia West, Freesia East, Gerbera West, Gerbera East: 28 m each.
    double metres = 34 + 34 + 34 + 40 + 62 + 18 + 28 + 28 + 28 + 28;
    assertThat(metres).isEqualTo(334);
    assertThat(cable.amountIn(Measure.METRIC)).isCloseTo(metres, within(EXACT));
    // 334 m and a tenth of it are 367.4 m.
    assertThat(cable.toOrder(bill.measure(), Slack.USUAL)).isEqualTo(368);
    // Lily West, both sides of Road Cabinet, Screens.
    assertThat(pieces(bill, Material.TERMINATOR, "120 ohm")).isEqualTo(1 + 2 + 1);
    // Two each at Lily West and Freesia West.
    assertThat(pieces(bill, Material.BIAS_RESISTOR, "470 ohm")).isEqualTo(2 + 2);
    // Two Lily, two Stock, Bouquet Hall, two Freesia, two Gerbera; Screens are of another type.
    assertThat(pieces(bill, Material.COMM_MODULE, "for eight-way")).isEqualTo(2 + 2 + 1 + 2 + 2);
    assertThat(pieces(bill, Material.COMM_MODULE, "for screen-drive")).isEqualTo(1);
    // Two each for the run before the repeater and the one after it.
    assertThat(pieces(bill, Material.SURGE_PROTECTOR, "")).isEqualTo(2 + 2);
    assertThat(pieces(bill, Material.REPEATER, "")).isEqualTo(1);
    assertThat(bill.counts()).hasSize(7).allMatch(MaterialCount::isComplete);
  }

  @Test
  void aLineInFeetWithAStub() {
    BillOfMaterials bill = bill("pellbrook-east.yaml");
    assertThat(bill.measure()).isEqualTo(Measure.US);
    MaterialCount cable = count(bill, Material.CABLE, "20 AWG, shielded, 120 ohm, pair");
    // East Corridor; Germination, Hellebores, Ferns; Hostas; Grasses, Climbers; Alpines; and the
    // stub of Climbers.
    double feet = 120 + 96 + 96 + 96 + 104 + 96 + 96 + 88.5 + 1.5;
    assertThat(feet).isEqualTo(794);
    assertThat(cable.amountIn(Measure.US)).isCloseTo(feet, within(EXACT));
    // An international foot is 0.3048 m.
    assertThat(cable.amount()).isCloseTo(794 * 0.3048, within(EXACT));
    // 794 ft and a tenth of it are 873.4 ft; and a quarter of it, 992.5 ft.
    assertThat(cable.toOrder(bill.measure(), Slack.USUAL)).isEqualTo(874);
    assertThat(cable.toOrder(bill.measure(), new Slack(0.25))).isEqualTo(993);
    // East Corridor and Cold Store.
    assertThat(pieces(bill, Material.TERMINATOR, "120 ohm")).isEqualTo(1 + 1);
    assertThat(pieces(bill, Material.BIAS_RESISTOR, "510 ohm")).isEqualTo(2);
    // All nine units.
    assertThat(pieces(bill, Material.COMM_MODULE, "for eight-way")).isEqualTo(9);
    assertThat(bill.counts()).hasSize(4).allMatch(MaterialCount::isComplete);
  }
}
