package curbwatt.scenarios.check;

import curbwatt.scenarios.file.ScenarioFile;

/** Looks at a whole file and notes what it finds wrong. */
@FunctionalInterface
interface Rule {
    /** Looks at a file; anything in it may be missing. */
    void look(ScenarioFile file, Findings findings);
}
