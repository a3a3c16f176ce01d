package pilefolio.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import pilefolio.model.Submission;
import pilefolio.model.WallRun;
import pilefolio.units.Units;

class WorkbookReaderTest {
  @Test
  void readsTheSmallSample() throws IOException {
    ReadResult result = TextTables.sample("ten-piles").read();
    assertEquals(List.of(), result.findings());
    Submission described = result.submission().orElseThrow();
    assertEquals(2, described.runs().size());
    WallRun run = described.runs().get(0);
    assertEquals(0.75, run.secondary().diameter().si(), 1e-15);
    assertEquals("Piles!C5", run.secondary().diameter().cell().address());
    assertEquals(3, described.profile(run).layers().size());
    assertEquals(
        33, described.profile(run).layers().get(1).frictionAngle().orElseThrow().in(Units.DEG));
    assertEquals(5, run.layout().piles().size());
    assertTrue(described.assumptions().stream().anyMatch(a -> a.column().equals("Wall adhesion")));
  }
}
