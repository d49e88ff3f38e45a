package curbwatt.scenarios.assemble;

import curbwatt.engine.study.odds.Input;
import curbwatt.engine.study.odds.OddsPlan;
import curbwatt.engine.study.odds.Sampling;
import curbwatt.engine.study.odds.Spread;
import curbwatt.scenarios.check.SpreadFigures;
import curbwatt.scenarios.file.OddsEntry;
import java.util.EnumMap;
import java.util.Map;

/**
 * From a checked entry to how the inputs of a scene are drawn.
 *
 * @param guarded catches what the engine refuses
 */
record OddsAssembler(Guarded guarded) {

    /** Returns the plan, with the usual for what is left out. */
    OddsPlan plan(OddsEntry entry) {
        Map<Input, Spread> spreads = new EnumMap<>(Input.class);
        for (Input input : Input.values()) {
            SpreadFigures.of(entry, input)
                    .ifPresent(figures ->
                            spreads.put(input, guarded.build(figures.entry().place(), figures::spread)));
        }
        OddsPlan usual = OddsPlan.usual();
        return guarded.build(
                entry.place(),
                () -> new OddsPlan(
                        entry.runs().orElse(usual.runs()),
                        entry.seed().map(Integer::longValue).orElse(usual.seed()),
                        entry.sampling()
                                .map(word -> Sampling.valueOf(word.name()))
                                .orElse(usual.sampling()),
                        entry.indices().orElse(usual.indices()),
                        spreads));
    }
}
