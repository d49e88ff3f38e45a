package curbwatt.engine.bench;

import curbwatt.engine.days.RosterResult;
import curbwatt.engine.study.Answer;
import curbwatt.engine.study.CutoffSetting;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import curbwatt.engine.study.Variation;
import curbwatt.engine.study.odds.OddsPlan;
import curbwatt.engine.study.odds.OddsResult;
import curbwatt.engine.study.odds.OddsStudy;
import curbwatt.engine.study.odds.Sampling;
import curbwatt.engine.study.settings.SettingsPlan;
import curbwatt.engine.verdict.Requirement;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Studies of the standard scene, and a year of daily duty. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class StudyBenchmark {

    static final int ODDS_RUNS = 10_000;

    private static final int WARMING_RUNS = 512;

    /** Number of threads. */
    @Param("2")
    public int threads;

    private Question question;
    private List<Variation> settings;

    /** Makes the question, and runs some draws so that the compilers have seen the engine. */
    @Setup
    public void prepare() {
        question = new Question(
                FlashingScene.standard().simulation(),
                List.of(new Requirement.HoldCircuits(Set.of("warning"), 6 * 3600), new Requirement.WillStart(0.2)));
        SettingsPlan plan = SettingsPlan.usual();
        settings = plan.tripLevelsV().stream()
                .flatMap(levelV -> plan.tripDelaysS().stream()
                        .<Variation>map(delayS -> CutoffSetting.trip("cutoff", levelV, delayS)))
                .toList();
        draws(WARMING_RUNS);
    }

    /** A run for each of the 41 × 21 usual settings of the cutoff. */
    @Benchmark
    public List<Answer> settingsMap() {
        return new RunPool(threads)
                .each(settings, setting -> question.of(setting).answer(), StudyWatch.none());
    }

    /** Draws with all inputs spread as usual. */
    @Benchmark
    public OddsResult odds() {
        return draws(ODDS_RUNS);
    }

    /** The same in a program that has just started; not warmed up. */
    @Benchmark
    public OddsResult oddsAtOnce() {
        return draws(ODDS_RUNS);
    }

    /** A year of daily duty; on one thread. */
    @Benchmark
    public RosterResult dutyYear() {
        return DutyYear.study().run();
    }

    private OddsResult draws(int runs) {
        return new OddsStudy(question, OddsPlan.usual().drawing(runs, 1, Sampling.SEEDED, false))
                .run(new RunPool(threads), StudyWatch.none());
    }
}
