package tightside.raster;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The parts of the pixels that are brought to the screen, beside a count pixel by pixel. */
class InkedTest {

  @ParameterizedTest
  @CsvSource({"1080, 862", "640, 480", "3000, 129", "17, 5", "1, 1"})
  void everyMarkedPixelLiesInOneArea(int width, int height) {
    Random random = new Random(width);
    for (int round = 0; round < 50; round++) {
      Inked inked = new Inked(width, height);
      boolean[] marked = new boolean[width * height];
      for (int i = 0; i < 12; i++) {
        int x = random.nextInt(width);
        int y = random.nextInt(height);
        int count = 1 + random.nextInt(Math.min(90, width - x));
        inked.mark(x, y, count);
        for (int k = 0; k < count; k++) {
          marked[y * width + x + k] = true;
        }
      }
      int[] areas = times(inked.areas(), width, height);
      for (int i = 0; i < marked.length; i++) {
        assertThat(areas[i]).isLessThanOrEqualTo(1).isGreaterThanOrEqualTo(marked[i] ? 1 : 0);
      }
    }
  }

  private static int[] times(List<Area> areas, int width, int height) {
    int[] times = new int[width * height];
    for (Area area : areas) {
      for (int y = area.y(); y < area.y() + area.height(); y++) {
        for (int x = area.x(); x < area.x() + area.width(); x++) {
          times[y * width + x]++;
        }
      }
    }
    return times;
  }

  @Test
  void bareCornersAndWideGapsAreLeftOut() {
    Inked inked = new Inked(1000, 500);
    assertThat(inked.areas()).isEmpty();
    inked.mark(40, 300, 20);
    inked.mark(900, 300, 20);
    List<Area> areas = inked.areas();
    assertThat(areas).hasSize(2);
    assertThat(areas.stream().mapToInt(a -> a.width() * a.height()).sum()).isLessThan(20_000);
    inked.clear();
    assertThat(inked.areas()).isEmpty();
  }
}
