package pilefolio.output.pdf;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import pilefolio.output.figure.Canvas;
import pilefolio.output.figure.Figure;
import pilefolio.output.figure.Hatch;
import pilefolio.output.figure.Lettering;
import pilefolio.output.figure.Palette;
import pilefolio.output.figure.Pen;

/**
 * A document that uses every element and class of the style sheet once; the scenario is made up.
 */
final class Specimen {
  static final DocumentInfo INFO =
      new DocumentInfo(
          "Specimen of a calculation package",
          "A. Engineer",
          "Secant wall",
          "specimen, secant wall",
          "en-GB",
          Instant.parse("2026-01-15T09:00:00Z"));

  private Specimen() {}

  static PdfOrder order(Paper paper) {
    return PdfOrder.of(xhtml(), INFO, paper).figures(List.of(new Sketch()));
  }

  /** A small body in the usual frame, for single points. */
  static PdfOrder small(String body) {
    return PdfOrder.of(frame("", body), INFO, Paper.A4);
  }

  static String frame(String head, String body) {
    return """
        <html><head><title>Specimen</title>
        <link rel="stylesheet" type="text/css" href="document.css"/>%s</head>
        <body>%s</body></html>
        """
        .formatted(head, body);
  }

  static String xhtml() {
    String head =
        """
        <bookmarks>
          <bookmark name="Contents" href="#toc"/>
          <bookmark name="1 Overlap of the piles" href="#c1">
            <bookmark name="1.1 Overlap at depth" href="#c11"/>
            <bookmark name="1.2 Thrust in the primary" href="#c12"/>
          </bookmark>
          <bookmark name="2 Piles" href="#c2"/>
          <bookmark name="3 Programme" href="#c3"/>
          <bookmark name="4 Records" href="#c4"/>
        </bookmarks>
        """;
    return frame(head, RUNNING + COVER + CONTENTS + chapterOne() + chapterTwo() + REST);
  }

  private static final String RUNNING =
      """
      <div class="header"><table><tr>
        <td><span class="title">Calculation package</span><br/>Basement at Mill Lane</td>
        <td class="right">Revision B<br/>For checking</td></tr></table></div>
      <div class="footer"><table><tr>
        <td>ML-CAL-001</td><td class="right">Page <span class="page-number"></span> of
        <span class="page-count"></span></td></tr></table></div>
      """;

  private static final String COVER =
      """
      <div class="cover">
        <div class="firm">Engineering office of our own making</div>
        <div class="kind">Calculation package</div>
        <div class="name">Basement at Mill Lane</div>
        <div class="about">Secant wall, runs A and B: stability, structure, joints, sequence</div>
        <table class="facts">
          <tr><td class="key">Document number</td><td>ML-CAL-001</td></tr>
          <tr><td class="key">Revision</td><td>B, 15 January 2026</td></tr>
          <tr><td class="key">Status</td><td>For checking</td></tr>
          <tr><td class="key">Basis of design</td><td>EN 1997-1, Design Approach 1</td></tr>
        </table>
        <table class="sign"><thead><tr><th></th><th>Name</th><th>Signature</th><th>Date</th></tr></thead>
        <tbody><tr><td>Prepared</td><td></td><td></td><td></td></tr>
        <tr><td>Checked</td><td></td><td></td><td></td></tr>
        <tr><td>Approved</td><td></td><td></td><td></td></tr></tbody></table>
      </div>
      """;

  private static final String CONTENTS =
      """
      <div class="chapter"><h1 id="toc">Contents</h1>
      <div class="toc">
        <a class="t1" href="#c1">1 Overlap of the piles</a>
        <a class="t2" href="#c11">1.1 Overlap at depth</a>
        <a class="t2" href="#c12">1.2 Thrust in the primary</a>
        <a class="t1" href="#c2">2 Piles</a>
        <a class="t1" href="#c3">3 Programme</a>
        <a class="t1" href="#c4">4 Records</a>
      </div></div>
      """;

  private static String chapterOne() {
    return """
        <div class="chapter">
        <h1 id="c1"><span class="n">1</span> Overlap of the piles</h1>
        <p>Neighbouring piles overlap by <i>c</i><sub>0</sub> as set out. Each pile may lean within
        its tolerance; the joint stays closed as long as an overlap is left, see
        <a class="ref" href="#c12">section 1.2</a> on page <a class="pg" href="#c12"></a>.</p>
        <div class="k">
        <h2 id="c11"><span class="n">1.1</span> Overlap at depth</h2>
        """
        + calc(
            given("S-Wall!C12", "diameter of the primary pile", "D_p", "D_p", "750 mm"),
            given("S-Wall!D12", "diameter of the secondary pile", "D_s", "D_s", "880 mm"),
            given("S-Wall!E12", "spacing, centre to centre", "s", "s", "610 mm"),
            group("Overlap left"),
            line(
                "geometry",
                "overlap as set out",
                "c_0 = \\frac{D_p + D_s}{2} − s = \\frac{750 + 880}{2} − 610",
                "c_0 = (D_p + D_s)/2 − s = (750 + 880)/2 − 610",
                "= 205 mm"),
            line(
                "execution tolerance",
                "deviation of one pile at depth z",
                "e_z = e_0 + \\frac{z}{n} = 25 + \\frac{9500}{200}",
                "e_z = e_0 + z/n = 25 + 9500/200",
                "= 72.5 mm"),
            line(
                "geometry",
                "overlap left if both lean apart",
                "c_z = c_0 − 2·e_z = 205 − 2·72.5",
                "c_z = c_0 − 2·e_z = 205 − 2·72.5",
                "= 60 mm"),
            require(
                "the joint stays closed",
                "c_z ≥ c_{min}: 60 ≥ 50",
                "c_z ≥ c_min: 60 ≥ 50",
                "ok",
                "satisfied",
                "0.83"))
        + "</div>"
        + """
        <div class="k">
        <h2 id="c12"><span class="n">1.2</span> Thrust in the primary</h2>
        <p>The primary spans between the beams as an arch.</p>
        """
        + calc(
            line(
                "sheet 3",
                "coefficient of active pressure",
                "K_a = \\frac{1 − \\sin φ′}{1 + \\sin φ′}"
                    + "·\\exp\\left(−2·δ·\\tan φ′\\right) = 0.307",
                "K_a = (1 − sin φ′)/(1 + sin φ′)·exp(−2·δ·tan φ′) = 0.307",
                "= 0.307"),
            line(
                "sheet 3",
                "effective active pressure at the excavation level, with everything written out",
                "σ′_{a,d} = K_a·\\left(\\sum γ′_i·h_i + q_{k}·γ_Q\\right)"
                    + " − 2·c′_d·\\sqrt{K_a·\\left(1 + \\frac{a}{c′_d}\\right)}"
                    + " = 0.307·\\left(18.0·2.50 + 10.5·4.20 + 10.0·1.30\\right)"
                    + " − 2·4.00·\\sqrt{0.307·\\left(1 + \\frac{2.00}{4.00}\\right)}",
                "σ′_a,d = K_a·(Σ γ′_i·h_i + q_k·γ_Q) − 2·c′_d·√(K_a·(1 + a/c′_d))"
                    + " = 0.307·(18.0·2.50 + 10.5·4.20 + 10.0·1.30)"
                    + " − 2·4.00·√(0.307·(1 + 2.00/4.00))",
                "= 25.9 kPa"),
            line(
                "own arithmetic",
                "maturity and early strength",
                "f_{cm}(t) = \\exp\\left[s_c·\\left(1 − \\sqrt{\\frac{28}{t/t_1}}\\right)\\right]"
                    + "·f_{cm}",
                "f_cm(t) = exp[s_c·(1 − √(28/(t/t_1)))]·f_cm",
                "= 12.4 MPa"),
            line(
                "own arithmetic",
                "the branch that applies",
                "K = \\begin{cases} \\frac{a}{b} & \\text{for } z ≤ z_0 \\\\"
                    + " \\sqrt[3]{\\bar{x}^2 + y_1^2} & \\text{otherwise} \\end{cases}",
                "K = a/b for z ≤ z_0, otherwise ³√(x² + y²)",
                "= 1.20"),
            require(
                "shear at the chord",
                "V_{Ed} ≤ V_{Rd}: 148 ≤ 121\\,\\mathrm{kN/m^2}",
                "V_Ed ≤ V_Rd: 148 ≤ 121 kN/m²",
                "bad",
                "not satisfied",
                "1.22"),
            require(
                "lateral restraint by the concrete",
                "\\text{no early strength given}",
                "no early strength given",
                "open",
                "not checked",
                ""))
        + """
        </div>
        <div class="figure"><object type="figure" data="sketch"></object>
        <p class="caption"><b>Figure 1.1</b> Joint between two piles as set out.</p></div>
        <p class="note">Levels are in metres above datum.</p>
        <div class="caution"><span class="lead">Caution.</span> The result rests on the ground
        report; local rules and the licensed engineer decide.</div>
        <div class="box">Assumption taken: no surcharge closer than 1.0 m to the wall.</div>
        </div>
        """;
  }

  private static String chapterTwo() {
    StringBuilder rows = new StringBuilder();
    for (int i = 1; i <= 60; i++) {
      rows.append(
          String.format(
              Locale.ROOT,
              "<tr><td>%s%d</td><td class=\"num\">%d</td><td class=\"num\">%.2f</td>"
                  + "<td class=\"num\">%.1f</td><td>%s</td><td class=\"num\">%.2f</td>"
                  + "<td><span class=\"ok\">satisfied</span></td></tr>%n",
              i % 2 == 1 ? "P" : "S",
              i,
              i % 2 == 1 ? 750 : 880,
              12.5 + i % 7 * 0.25,
              4.9 + i * 0.03,
              i % 2 == 1 ? "plain" : "HE 300 B",
              0.5 + i * 0.006));
    }
    return """
        <div class="chapter"><h1 id="c2"><span class="n">2</span> Piles</h1>
        <table class="data"><thead>
        <tr class="names"><th>Mark</th><th class="num">Diameter</th><th class="num">Length</th>
        <th class="num">Volume</th><th>Beam</th><th class="num">Utilisation</th><th>Result</th></tr>
        <tr class="units"><th></th><th class="num">mm</th><th class="num">m</th>
        <th class="num">m<sup>3</sup></th><th></th><th></th><th></th></tr></thead><tbody>
        """
        + rows
        + """
        <tr class="total"><td>Total</td><td></td><td class="num">795.00</td>
        <td class="num">348.9</td><td></td><td></td><td></td></tr>
        </tbody></table></div>
        """;
  }

  private static final String REST =
      """
      <div class="wide"><h1 id="c3"><span class="n">3</span> Programme</h1>
      <table class="data"><thead><tr><th style="width:30mm">Day</th><th>Piles</th></tr></thead>
      <tbody><tr><td>Mon 2 March</td><td>P1, P5, P9, P13, P17</td></tr>
      <tr class="governing"><td>Tue 3 March</td><td>P3, P7, P11, P15, P19</td></tr></tbody></table>
      <table class="steps">
      <tr><td class="step">1</td><td>Set the casing on the mark of the guide wall.</td>
      <td class="point"><span class="hold">Hold point H1</span></td></tr>
      <tr><td class="step">2</td><td>Drill to the toe; take the casing down ahead of the auger.</td>
      <td class="point"><span class="witness">Witness point W1</span></td></tr></table>
      </div>
      <div class="chapter"><h1 id="c4"><span class="n">4</span> Records</h1>
      <table class="form"><thead><tr><th style="width:22mm">Check</th><th>Comment</th>
      <th style="width:20mm">Initials</th><th style="width:26mm">Status</th></tr></thead>
      <tbody><tr><td>JOINT-01</td><td class="blank"></td><td></td><td></td></tr>
      <tr><td>SHEAR-02</td><td class="blank"></td><td></td><td></td></tr></tbody></table>
      <ul><li>bored pile: <code>P12</code></li><li>beam in place</li></ul>
      <h3>Third level</h3><p>Text.</p><h4>Fourth level</h4><p>Text.</p>
      <p class="formula"><math tex="W = \\frac{π·D^2}{4}·L·γ_c" alt="W = π·D²/4·L·γ_c"/></p>
      </div>
      """;

  static String calc(String... rows) {
    return """
        <table class="calc"><colgroup><col class="ref"/><col class="work"/><col class="res"/>
        </colgroup><thead><tr><td class="ref">Reference</td><td class="work">Calculation</td>
        <td class="res">Result</td></tr></thead>
        """
        + String.join("", rows)
        + "</table>";
  }

  static String given(String ref, String what, String tex, String alt, String result) {
    return """
        <tbody class="given"><tr><td class="ref">%s</td><td class="work">%s, %s</td>
        <td class="res">= %s</td></tr></tbody>
        """
        .formatted(ref, math(tex, alt), what, result);
  }

  static String line(String ref, String what, String tex, String alt, String result) {
    return row("line", ref, what, math(tex, alt), result);
  }

  static String group(String title) {
    return "<tbody class=\"group\"><tr><td class=\"ref\"></td><td class=\"work\">"
        + title
        + "</td><td class=\"res\"></td></tr></tbody>";
  }

  static String require(
      String what, String tex, String alt, String kind, String word, String utilisation) {
    String util = utilisation.isEmpty() ? "" : " <span class=\"util\">" + utilisation + "</span>";
    return row(
        "require last",
        "",
        what,
        math(tex, alt),
        "<span class=\"" + kind + "\">" + word + "</span>" + util);
  }

  private static String row(String kind, String ref, String what, String work, String result) {
    return """
        <tbody class="%s"><tr class="what"><td class="ref">%s</td><td class="work">%s</td>
        <td class="res"></td></tr><tr class="line"><td class="ref"></td><td class="work">%s</td>
        <td class="res">%s</td></tr></tbody>
        """
        .formatted(kind, ref, what, work, result);
  }

  static String math(String tex, String alt) {
    return "<math tex=\"%s\" alt=\"%s\"/>"
        .formatted(tex.replace("&", "&amp;").replace("<", "&lt;"), alt.replace("<", "&lt;"));
  }

  /** Two overlapping circles with dimensions. */
  static final class Sketch implements Figure {
    @Override
    public String id() {
      return "sketch";
    }

    @Override
    public double widthMm() {
      return 120;
    }

    @Override
    public double heightMm() {
      return 52;
    }

    @Override
    public String caption() {
      return "Joint between two piles as set out";
    }

    @Override
    public void draw(Canvas canvas) {
      canvas.rectangle(null, Palette.PAPER, 0, 0, 120, 52);
      canvas.circle(Pen.MEDIUM, Palette.WHITE, 40, 22, 15);
      canvas.circle(Pen.BOLD, Palette.ACCENT_TINT, 65, 22, 17.6);
      canvas.dimension(40, 22, 65, 22, -22, "s = 610 mm");
      canvas.text(30, 22, "P_{12}", Lettering.LABEL.middle().centred());
      canvas.text(68, 22, "S_{13}", Lettering.LABEL.bold().middle().centred());
      canvas.arrow(Pen.FINE, 100, 10, 84, 18);
      canvas.text(101, 10, "K_{a,h} = 0.307", Lettering.SMALL.centred());
      double[] square = {92, 28, 116, 28, 116, 46, 92, 46};
      canvas.hatch(Hatch.RISING, 1.5, Pen.FINE, square);
      canvas.polygon(Pen.MEDIUM, null, square);
      canvas.text(5, 40, "upright", Lettering.SMALL.turned(90));
    }
  }
}
