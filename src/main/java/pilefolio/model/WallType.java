package pilefolio.model;

/** What a wall consists of. */
public enum WallType implements Choice {
  /** Secant piles; primaries of a weak mix, such as cement-bentonite. */
  HARD_SOFT("Hard/soft", Family.SECANT),
  /** Secant piles; primaries of retarded low-strength concrete. */
  HARD_FIRM("Hard/firm", Family.SECANT),
  /** Secant piles; primaries of structural concrete. */
  HARD_HARD("Hard/hard", Family.SECANT),
  /** Bored piles side by side with gaps. */
  CONTIGUOUS("Contiguous", Family.CONTIGUOUS),
  /** Beams set in predrilled holes, timber boards between them. */
  SOLDIER_TIMBER("Soldier beams and timber", Family.SOLDIER),
  /** Beams set in predrilled holes, sprayed concrete between them. */
  SOLDIER_SHOTCRETE("Soldier beams and shotcrete", Family.SOLDIER),
  /** Sheet piles in a line. */
  SHEET_PILES("Sheet piles", Family.SHEET),
  /** Beams in predrilled holes at the spacing of pairs of sheet piles between them. */
  KING_PILES("King piles", Family.KING);

  private enum Family {
    SECANT,
    CONTIGUOUS,
    SOLDIER,
    SHEET,
    KING
  }

  private final String label;
  private final Family family;

  WallType(String label, Family family) {
    this.label = label;
    this.family = family;
  }

  @Override
  public String label() {
    return label;
  }

  /** True for overlapping primaries and secondaries. */
  public boolean secant() {
    return family == Family.SECANT;
  }

  /** True for soldier beams with any lagging. */
  public boolean soldierBeams() {
    return family == Family.SOLDIER;
  }

  /** True if beams in holes carry, with something lighter between them. */
  public boolean kingOrSoldierBeams() {
    return soldierBeams() || family == Family.KING;
  }

  /** True for a wall of sheet piles alone. */
  public boolean sheetPiles() {
    return family == Family.SHEET;
  }

  /** True if the wall stands on bored piles or on beams in bored holes. */
  public boolean bored() {
    return family != Family.SHEET;
  }

  /** True if the wall is closed against water. */
  public boolean closed() {
    return secant() || sheetPiles() || family == Family.KING;
  }
}
