package pilefolio.standards;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The rolled sections the program knows, found by designation.
 *
 * <p>Designations are read forgivingly: spaces, case and the sign between the numbers do not
 * matter, the letters of an HE or IPE beam may stand before or after the number, and the letters of
 * a universal section before or after the dimensions.
 */
public final class SectionTable {
  private static final String STANDARD = "# standard:";
  private static final double INCH = 0.0254;
  private static final double POUND = 0.45359237;
  private static final Pattern WIDE = Pattern.compile("HE(AA|A|B|C|M)(\\d+)");
  private static final Pattern VARIANT = Pattern.compile("HE(AA|A|B|C|M)");
  private static final Pattern BEAM = Pattern.compile("IPE(\\d+)(AA|A|O|V)");
  private static final Pattern LETTERS_LAST = Pattern.compile("(\\d[\\dX.]*)(UBP|UB|UC|HP|W)");

  private static final SectionTable ALL = load();

  private final Map<String, Section> byKey;
  private final List<Section> sections;

  private SectionTable(Map<String, Section> byKey) {
    this.byKey = byKey;
    this.sections = List.copyOf(byKey.values());
  }

  /** The table with every family. */
  public static SectionTable all() {
    return ALL;
  }

  /** Every section, in the order of the files. */
  public List<Section> sections() {
    return sections;
  }

  /** The section with a designation, or empty. */
  public Optional<Section> find(String designation) {
    return Optional.ofNullable(byKey.get(key(designation)));
  }

  /**
   * Designations that resemble one that was not found, closest first.
   *
   * @param designation what the user wrote
   * @param count most suggestions wanted
   */
  public List<String> suggestions(String designation, int count) {
    String wanted = key(designation);
    return sections.stream()
        .map(section -> new Near(section.name(), distance(wanted, key(section.name()))))
        .filter(near -> near.distance <= Math.max(2, wanted.length() / 2))
        .sorted(Comparator.comparingInt(Near::distance).thenComparing(Near::name))
        .limit(count)
        .map(Near::name)
        .toList();
  }

  /**
   * The sections of a family or depth class, the lightest first; empty if there is none.
   *
   * @param family such as {@code HEB}, {@code IPE}, {@code W14} or {@code UC 305}
   */
  public List<Section> family(String family) {
    String wanted = key(family);
    Matcher variant = VARIANT.matcher(wanted);
    Pattern pattern =
        variant.matches()
            ? Pattern.compile("HE\\d+" + variant.group(1))
            : Pattern.compile(
                Pattern.quote(wanted) + (wanted.matches(".*\\d") ? "\\D.*" : "\\d.*"));
    return byKey.entrySet().stream()
        .filter(entry -> pattern.matcher(entry.getKey()).matches())
        .map(Map.Entry::getValue)
        .sorted(Comparator.comparingDouble(Section::mass).thenComparing(Section::name))
        .toList();
  }

  private record Near(String name, int distance) {}

  private static String key(String designation) {
    String key =
        designation
            .toUpperCase(Locale.ROOT)
            .replaceAll("[\\s\\u00A0_-]", "")
            .replaceAll("[×*✕]", "X")
            .replace(',', '.');
    Matcher wide = WIDE.matcher(key);
    if (wide.matches()) {
      return "HE" + wide.group(2) + wide.group(1);
    }
    Matcher beam = BEAM.matcher(key);
    if (beam.matches()) {
      return "IPE" + beam.group(2) + beam.group(1);
    }
    Matcher last = LETTERS_LAST.matcher(key);
    if (last.matches()) {
      return last.group(2) + last.group(1);
    }
    return key;
  }

  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    Arrays.setAll(row, i -> i);
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }

  private static SectionTable load() {
    Map<String, Section> found = new LinkedHashMap<>();
    for (SectionFamily family : SectionFamily.values()) {
      for (Section section : read(family)) {
        if (found.put(key(section.name()), section) != null) {
          throw new IllegalStateException("two sections are called " + section.name());
        }
      }
    }
    return new SectionTable(found);
  }

  private static List<Section> read(SectionFamily family) {
    List<Section> rows = new ArrayList<>();
    String standard = "";
    List<String> columns = List.of();
    for (String line : lines(family.file())) {
      boolean comment = line.startsWith("#") || line.isBlank();
      if (line.startsWith(STANDARD)) {
        standard = line.substring(STANDARD.length()).strip();
      }
      if (comment) {
        continue;
      }
      if (columns.isEmpty()) {
        columns = List.of(line.split(",", -1));
        continue;
      }
      Row row = Row.of(family.file(), columns, line);
      rows.add(family.inches() ? american(family, standard, row) : metric(family, standard, row));
    }
    if (standard.isEmpty() || rows.isEmpty()) {
      throw new IllegalStateException(family.file() + ": no standard named, or no rows");
    }
    return rows;
  }

  private static List<String> lines(String file) {
    String path = "/standards/sections/" + file;
    try (InputStream in = SectionTable.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("missing " + path);
      }
      return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(path, e);
    }
  }

  private record Row(String file, List<String> columns, List<String> cells) {
    static Row of(String file, List<String> columns, String line) {
      List<String> cells = List.of(line.split(",", -1));
      if (cells.size() != columns.size()) {
        throw new IllegalStateException(file + ": wrong number of cells in " + line);
      }
      return new Row(file, columns, cells);
    }

    String text(String column) {
      int at = columns.indexOf(column);
      if (at < 0) {
        throw new IllegalStateException(file + ": no column " + column);
      }
      return cells.get(at);
    }

    double value(String column, double unit) {
      return Double.parseDouble(text(column)) * unit;
    }
  }

  private static Section american(SectionFamily family, String standard, Row row) {
    double in2 = INCH * INCH;
    double in3 = in2 * INCH;
    double in4 = in2 * in2;
    double flange = row.value("flange_in", INCH);
    return new Section(
        row.text("name"),
        family,
        standard,
        row.value("weight_plf", POUND / (12 * INCH)),
        row.value("depth_in", INCH),
        row.value("flange_width_in", INCH),
        row.value("web_in", INCH),
        flange,
        row.value("k_des_in", INCH) - flange,
        row.value("area_in2", in2),
        row.value("Ix_in4", in4),
        row.value("Sx_in3", in3),
        row.value("Zx_in3", in3),
        row.value("Iy_in4", in4),
        row.value("Sy_in3", in3),
        row.value("Zy_in3", in3),
        row.value("J_in4", in4),
        row.value("Cw_in6", in3 * in3),
        row.value("rts_in", INCH),
        row.value("ho_in", INCH));
  }

  private static Section metric(SectionFamily family, String standard, Row row) {
    double depth = row.value("depth_mm", 1e-3);
    double flange = row.value("flange_mm", 1e-3);
    double weakInertia = row.value("Iz_cm4", 1e-8);
    double elastic = row.value("Wel_y_cm3", 1e-6);
    double warping = row.value("Iw_cm6", 1e-12);
    return new Section(
        row.text("name"),
        family,
        standard,
        row.value("mass_kg_m", 1),
        depth,
        row.value("width_mm", 1e-3),
        row.value("web_mm", 1e-3),
        flange,
        row.value("root_radius_mm", 1e-3),
        row.value("area_cm2", 1e-4),
        row.value("Iy_cm4", 1e-8),
        elastic,
        row.value("Wpl_y_cm3", 1e-6),
        weakInertia,
        row.value("Wel_z_cm3", 1e-6),
        row.value("Wpl_z_cm3", 1e-6),
        row.value("It_cm4", 1e-8),
        warping,
        // r_ts² = √(I_z·I_w)/W_el, the definition that American tables use.
        Math.sqrt(Math.sqrt(weakInertia * warping) / elastic),
        depth - flange);
  }
}
