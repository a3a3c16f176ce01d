package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * One level of props or anchors.
 *
 * @param at the first cell of the row
 * @param id name by which stages call it
 * @param kind prop or anchor
 * @param level where it meets the wall, an elevation
 * @param spacing along the wall, a length
 * @param inclination below the horizontal, an angle; 0 for a prop
 * @param resistance of one prop or anchor along its axis, a force: allowable on an allowable-stress
 *     basis, design value otherwise; absent means it is designed by others for the force found
 * @param preload preload or lock-off, in words
 * @param lockOff force of one locked in when it is installed, along its axis, N
 * @param stiffness of one along its axis, N/m; from its members if empty
 */
public record Support(
    CellRef at,
    String id,
    SupportKind kind,
    Value level,
    Value spacing,
    Value inclination,
    Optional<Value> resistance,
    String preload,
    Optional<Value> lockOff,
    Optional<Value> stiffness) {}
