package tightside.print;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.TextDirection;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import tightside.sheet.JobCard;

/** Pages of HTML as PDF. */
public final class Pdf {

  private static final String FAMILY = "DejaVu Sans Condensed";

  /** Letters of a card, points: the largest with which it fits on its page. */
  private static final double[] CARD_POINTS = {12, 11.5, 11, 10.5, 10, 9.5};

  /** Letters of a card that goes on on the back of its paper, points. */
  private static final double BACK_POINTS = 11.5;

  /** Held, or their silence would be forgotten: they warn of fonts that no page here uses. */
  private static final List<Logger> LOUD =
      List.of(Logger.getLogger("org.apache.pdfbox"), Logger.getLogger("org.apache.fontbox"));

  static {
    LOUD.forEach(logger -> logger.setLevel(Level.OFF));
  }

  private Pdf() {}

  /** The whole file, or nothing at all. */
  public static byte[] of(String html) {
    XRLog.setLoggingEnabled(false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
      new PdfRendererBuilder()
          .useSVGDrawer(drawer)
          .useFont(() -> Letters.font(Letters.REGULAR), FAMILY, 400, FontStyle.NORMAL, true)
          .useFont(() -> Letters.font(Letters.BOLD), FAMILY, 700, FontStyle.NORMAL, true)
          .useUnicodeBidiSplitter(RightToLeft::new)
          .useUnicodeBidiReorderer(new RightToLeft.Reversed())
          .defaultTextDirection(TextDirection.LTR)
          .withHtmlContent(html, null)
          .toStream(out)
          .run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /**
   * The card on one page; where its letters would be too small to read at arm's length it goes on
   * on the back.
   *
   * @param notProved what must be known of a drive that is only measured
   */
  public static byte[] card(JobCard card, Paper paper, Optional<String> notProved) {
    for (double points : CARD_POINTS) {
      byte[] pdf = of(SheetHtml.card(card, paper, points, notProved));
      if (pages(pdf) == 1) {
        return pdf;
      }
    }
    return of(SheetHtml.card(card, paper, BACK_POINTS, notProved));
  }

  /** How many pages a PDF has. */
  public static int pages(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return document.getNumberOfPages();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
