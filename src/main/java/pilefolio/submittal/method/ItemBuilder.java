package pilefolio.submittal.method;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import pilefolio.findings.CellRef;
import pilefolio.model.Value;
import pilefolio.units.Unit;

/** Collects the words and facts of one {@link Item}. */
final class ItemBuilder {
  private final FactWriter writer;
  private final String id;
  private final String text;
  private final Map<String, String> words = new LinkedHashMap<>();
  private final Map<String, Fact> facts = new LinkedHashMap<>();

  ItemBuilder(FactWriter writer, String id, String text) {
    this.writer = writer;
    this.id = id;
    this.text = text;
  }

  ItemBuilder words(String name, String words) {
    if (!words.isEmpty()) {
      this.words.put(name, words);
    }
    return this;
  }

  ItemBuilder value(String name, Value value, Unit declared) {
    return fact(name, writer.value(value, declared));
  }

  ItemBuilder value(String name, Optional<Value> value, Unit declared) {
    return fact(name, writer.value(value, declared));
  }

  ItemBuilder level(String name, Value value) {
    return fact(name, writer.level(value));
  }

  ItemBuilder level(String name, Optional<Value> value) {
    return fact(name, value.map(writer::level));
  }

  ItemBuilder cell(String name, String words, CellRef at) {
    return words.isEmpty() ? this : fact(name, writer.words(words, at));
  }

  ItemBuilder fact(String name, Fact fact) {
    facts.put(name, fact);
    return this;
  }

  ItemBuilder fact(String name, Optional<Fact> fact) {
    fact.ifPresent(f -> facts.put(name, f));
    return this;
  }

  Item build() {
    return new Item(
        id, text, Collections.unmodifiableMap(words), Collections.unmodifiableMap(facts));
  }
}
