package tightside.validation.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import tightside.job.Adapter;
import tightside.job.Torque;
import tightside.job.TorqueUnit;
import tightside.validation.Printed;
import tightside.validation.Row;
import tightside.validation.Rows;

/** Torque units and adapters as printed. Tolerance: half of the last printed digit. */
class TorqueTest {

  @ParameterizedTest
  @Rows("published/torque-adapters.csv")
  void wrenchIsSetAsPrinted(Row row) {
    double mm = row.text("length_unit").equals("in") ? 25.4 : 10;
    Adapter adapter =
        new Adapter(row.number("length") * mm, row.number("reach") * mm, row.number("angle"));
    Printed setting = row.printed("printed_setting");
    assertThat(adapter.setting(new Torque(row.number("wanted"), unit(row))))
        .isCloseTo(setting.value(), within(setting.halfDigit()));
  }

  @ParameterizedTest
  @Rows("published/torque-units.csv")
  void unitIsAsPrinted(Row row) {
    Printed printed = row.printed("printed_newton_metres");
    assertThat(new Torque(1, unit(row)).newtonMetres())
        .isCloseTo(printed.value(), within(printed.halfDigit() + Math.ulp(1.0)));
  }

  private static TorqueUnit unit(Row row) {
    return TorqueUnit.valueOf(row.text("unit").toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
