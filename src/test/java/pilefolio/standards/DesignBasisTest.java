package pilefolio.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Known;
import pilefolio.units.Units;

/** Values of the design bases against the documents they name, and how users change them. */
class DesignBasisTest {
  private static final DesignBasis EC = DesignBases.find("ec7-da1").orElseThrow();
  private static final DesignBasis US = DesignBases.find("us-asd").orElseThrow();

  /** Recommended values of EN 1997-1:2004 Annex A, EN 1992-1-1 and EN 1993-1-1. */
  @ParameterizedTest
  @CsvSource({
    "ground.friction, 1.0, 1.25",
    "ground.cohesion, 1.0, 1.25",
    "ground.undrained, 1.0, 1.4",
    "ground.weight, 1.0, 1.0",
    "action.permanent.unfavourable, 1.35, 1.0",
    "action.permanent.favourable, 1.0, 1.0",
    "action.variable.unfavourable, 1.5, 1.3",
    "action.variable.favourable, 0, 0",
    "passive.safety, 1.0, 1.0",
    "overdig.fraction, 0.1, 0.1",
    "overdig.limit, 0.5, 0.5",
    "pile.bored.base, 1.25, 1.6",
    "pile.bored.shaft, 1.0, 1.3",
    "pile.bored.total, 1.15, 1.5",
    "pile.bored.tension, 1.25, 1.6",
    "pile.cfa.base, 1.1, 1.45",
    "pile.cfa.shaft, 1.0, 1.3",
    "pile.cfa.total, 1.1, 1.4",
    "anchor.resistance, 1.1, 1.1",
    "steel.yield, 1.0, 1.0",
    "steel.buckling, 1.0, 1.0",
    "concrete.material, 1.5, 1.5",
    "concrete.plain.compression, 0.8, 0.8",
    "concrete.plain.tension, 0.8, 0.8",
    "uplift.permanent.stabilising, 0.9, 0.9",
    "heave.permanent.destabilising, 1.35, 1.35"
  })
  void designApproachOne(String key, double first, double second) {
    assertEquals(first, EC.value(key, "DA1-1"));
    assertEquals(second, EC.value(key, "DA1-2"));
    assertCited(EC.factor(key));
  }

  /** AISC 360-22, ACI 318-14 and usual practice. */
  @ParameterizedTest
  @CsvSource({
    "ground.friction, 1",
    "action.permanent.unfavourable, 1",
    "passive.safety, 1.5",
    "embedment.increase, 1.2",
    "steel.bending, 1.67",
    "steel.shear.rolled, 1.5",
    "steel.shear, 1.67",
    "steel.compression, 1.67",
    "concrete.plain, 0.6",
    "pile.safety, 2.5",
    "anchor.bond.soil, 2",
    "anchor.bond.rock, 3",
    "stability.heave, 1.5",
    "stability.piping, 1.5"
  })
  void allowableStress(String key, double value) {
    assertEquals(value, US.value(key, "ASD"));
    assertCited(US.factor(key));
  }

  /** Recommended values of EN 1997-1:2004 Annex A; passive pressure is a resistance in R2. */
  @ParameterizedTest
  @CsvSource({
    "ground.friction, 1.0, 1.25",
    "ground.cohesion, 1.0, 1.25",
    "ground.undrained, 1.0, 1.4",
    "ground.weight, 1.0, 1.0",
    "action.permanent.unfavourable, 1.35, 1.0",
    "action.variable.unfavourable, 1.5, 1.3",
    "action.water, 1.35, 1.0",
    "action.structural.permanent, 1.35, 1.35",
    "action.structural.variable, 1.5, 1.5",
    "passive.action, 1.0, 1.0",
    "passive.safety, 1.4, 1.0",
    "pile.bored.base, 1.1, 1.0",
    "pile.bored.shaft, 1.1, 1.0",
    "pile.strength, 1.0, 1.4",
    "overdig.fraction, 0.1, 0.1",
    "steel.yield, 1.0, 1.0",
    "concrete.material, 1.5, 1.5"
  })
  void designApproachesTwoAndThree(String key, double two, double three) {
    DesignBasis second = DesignBases.find("ec7-da2").orElseThrow();
    DesignBasis third = DesignBases.find("ec7-da3").orElseThrow();
    assertEquals(two, second.value(key, "DA2"));
    assertEquals(three, third.value(key, "DA3"));
    assertCited(second.factor(key));
    assertCited(third.factor(key));
  }

  /** AASHTO LRFD Table 11.5.7-1 as read; load factors and drilled shafts from memory. */
  @ParameterizedTest
  @CsvSource({
    "action.permanent.unfavourable, 1.5, MEMORY",
    "action.variable.unfavourable, 1.75, MEMORY",
    "action.apparent, 1.35, MEMORY",
    "action.water, 1.0, MEMORY",
    "passive.action, 1.0, READ",
    "steel.bending.resistance, 0.9, READ",
    "steel.shear.rolled.resistance, 1.0, QUOTED",
    "steel.compression.resistance, 0.9, QUOTED",
    "anchor.pullout.sand, 0.65, READ",
    "anchor.pullout.clay, 0.70, READ",
    "anchor.pullout.rock, 0.50, READ",
    "anchor.tendon.high, 0.80, READ",
    "pile.resistance.shaft.clay, 0.45, MEMORY",
    "pile.resistance.shaft.sand, 0.55, MEMORY",
    "pile.resistance.base.clay, 0.40, MEMORY",
    "pile.resistance.base.sand, 0.50, MEMORY"
  })
  void loadAndResistanceFactors(String key, double value, Known known) {
    DesignBasis basis = DesignBases.find("aashto-lrfd").orElseThrow();
    assertEquals(value, basis.value(key, "Strength I"));
    assertEquals(known, basis.factor(key).reference().known());
    assertEquals(0.75, 1 / basis.value("passive.safety", "Strength I"), 1e-12);
  }

  /**
   * A check may ask every basis for a factor, but those of a code of steel or concrete, or of one
   * way of writing the safety of piles and anchors or against water, only the bases that have it.
   */
  @Test
  void basesAnswerTheSameQuestions() {
    for (DesignBasis asked : DesignBases.all()) {
      for (DesignBasis other : DesignBases.all()) {
        for (Factor factor : other.factors()) {
          String key = factor.key();
          boolean shared =
              key.startsWith("steel.")
                  ? asked.steel() == other.steel()
                  : key.startsWith("concrete.")
                      ? asked.concrete() == other.concrete()
                      : key.matches(
                              "pile\\.(?!alpha|beta).*|action\\.structural\\..*|uplift\\..*"
                                  + "|anchor\\..*|heave\\.(permanent|prism)\\..*|timber\\..*")
                          ? asked.format() == other.format()
                          : true;
          if (shared) {
            assertTrue(
                asked.factors().stream().anyMatch(f -> f.key().equals(key)),
                asked.id() + " has no factor " + key + ", which checks ask " + other.id() + " for");
          }
        }
      }
    }
  }

  private static void assertCited(Factor factor) {
    assertFalse(factor.reference().text().isBlank(), factor.key());
    assertFalse(factor.meaning().isBlank(), factor.key());
  }

  /** Only what was read carries a clause that a document may print without a caution. */
  @Test
  void citationsSayHowTheyAreKnown() {
    assertEquals(Known.READ, EC.factor("ground.friction").reference().known());
    assertEquals("EN 1997-1:2004, Table A.4", EC.factor("ground.friction").reference().text());
    assertEquals(Known.MEMORY, EC.factor("pile.bored.base").reference().known());
    assertEquals(Known.QUOTED, US.factor("steel.bending").reference().known());
    assertEquals(Known.PRACTICE, US.factor("pile.safety").reference().known());
  }

  @Test
  void combinationsAreNamed() {
    assertEquals(List.of("DA1-1", "DA1-2"), ids(EC));
    assertEquals(List.of("ASD"), ids(US));
    assertThrows(IllegalArgumentException.class, () -> EC.value("ground.friction", "ASD"));
    assertThrows(IllegalArgumentException.class, () -> EC.value("no.such", "DA1-1"));
    assertTrue(DesignBases.find("ec7").isEmpty());
  }

  private static List<String> ids(DesignBasis basis) {
    return basis.combinations().stream().map(Combination::id).toList();
  }

  @Test
  void userValuesLieOnTopAndAreRemembered() {
    Map<String, Double> entries = new LinkedHashMap<>();
    entries.put("pile.model", 1.2);
    entries.put("pile.bored.base@DA1-2", 2.0);
    entries.put("pile.bored.bottom", 2.0);
    entries.put("ground.friction@DA2", 1.1);
    entries.put("ground.undrained", 14.0);
    DesignBasis.Changed changed = EC.with(entries);
    assertEquals(1.2, changed.basis().value("pile.model", "DA1-1"));
    assertEquals(1.25, changed.basis().value("pile.bored.base", "DA1-1"));
    assertEquals(2.0, changed.basis().value("pile.bored.base", "DA1-2"));
    assertEquals(
        List.of(
            new DesignBasis.Entered("pile.model", "all", "1.4", "1.2"),
            new DesignBasis.Entered("pile.bored.base", "DA1-2", "1.6", "2")),
        changed.basis().overrides());
    assertTrue(changed.basis().isOverridden("pile.bored.base", "DA1-2"));
    assertFalse(changed.basis().isOverridden("pile.bored.base", "DA1-1"));
    assertEquals(
        List.of("pile.bored.bottom", "ground.friction@DA2", "ground.undrained"),
        changed.refused().stream().map(DesignBasis.Refusal::entry).toList());
    assertEquals("the value must lie between 1 and 2", changed.refused().get(2).reason());
    assertEquals(1.4, EC.value("pile.model", "DA1-1"), "the published basis stays as it is");
  }

  /** A factor that no check reads could be changed without effect; such ones are kept apart. */
  @Test
  void everyFactorIsReadByACheck() throws IOException {
    StringBuilder sources = new StringBuilder();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/pilefolio/checks"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        sources.append(Files.readString(file));
      }
    }
    for (DesignBasis basis : DesignBases.all()) {
      for (Factor factor : basis.factors()) {
        String key = factor.key().replaceAll("pile\\.(bored|cfa)\\.", "");
        assertTrue(sources.indexOf("\"" + key + "\"") >= 0, factor.key());
      }
      for (Factor factor : basis.further()) {
        assertTrue(sources.indexOf("\"" + factor.key() + "\"") < 0, factor.key());
        assertEquals(
            "no check uses this factor",
            basis.with(Map.of(factor.key(), factor.low())).refused().get(0).reason());
      }
    }
  }

  /** Symbols stand in formulas as they stand in the table of factors. */
  @Test
  void symbolsAreInTheNotationOfFormulas() {
    for (DesignBasis basis : DesignBases.all()) {
      for (Factor factor : basis.factors()) {
        CalcSheet sheet = CalcSheet.named("x").given(factor.symbol(), Units.ONE, factor.meaning());
        assertEquals(Set.of(factor.symbol()), sheet.symbols().keySet());
      }
    }
  }

  @Test
  void filesAreReadStrictly() {
    TypeReference<Combination> type = new TypeReference<>() {};
    for (String wrong :
        List.of(
            "{\"id\": 1, \"title\": \"a\"}",
            "{\"id\": \"a\"}",
            "{\"id\": \"a\", \"title\": null}",
            "{\"id\": \"a\", \"title\": \"b\", \"more\": \"c\"}",
            "{\"id\": \"a\", \"id\": \"b\", \"title\": \"c\"}",
            "{\"id\": \"a\", \"title\": \"b\"} x")) {
      assertThrows(JsonProcessingException.class, () -> DataFile.parse(wrong, type), wrong);
    }
    TypeReference<Map<String, Double>> numbers = new TypeReference<>() {};
    assertThrows(JsonProcessingException.class, () -> DataFile.parse("{\"a\": \"1.5\"}", numbers));
  }
}
