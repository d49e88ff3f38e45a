package curbwatt.engine.study;

import curbwatt.engine.quantity.Require;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

/**
 * Works on independent cases with several threads. The results stand in the order of the cases, whichever thread did
 * them and whenever.
 *
 * @param threads number of threads, 1 … 1024
 */
public record RunPool(int threads) {

    /** Refuses no thread. */
    public RunPool {
        Require.inside("threads", threads, 1, 1024, "");
    }

    /**
     * Does the same work on every case.
     *
     * @param cases the cases, independent of each other
     * @param work what is done with one; a pure function
     * @param watch hears after each case how many are done
     * @return what came out, in the order of the cases
     * @throws StudyStoppedException if the watch stopped it
     */
    public <C, R> List<R> each(List<C> cases, Function<? super C, ? extends R> work, StudyWatch watch) {
        Family<C, R> family = new Family<>(cases, work, watch);
        if (threads == 1 || cases.size() < 2) {
            family.run();
        } else {
            together(family);
        }
        return family.results();
    }

    private void together(Family<?, ?> family) {
        ExecutorService workers = Executors.newFixedThreadPool(threads);
        try {
            List<CompletableFuture<Void>> all = new ArrayList<>();
            for (int i = 0; i < threads; i++) {
                all.add(CompletableFuture.runAsync(family::run, workers));
            }
            CompletableFuture.allOf(all.toArray(CompletableFuture[]::new)).join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException fault) {
                throw fault;
            }
            throw e;
        } finally {
            workers.shutdownNow();
        }
    }

    /** The cases of one call, handed out one by one. */
    private static final class Family<C, R> {
        private final List<C> cases;
        private final Function<? super C, ? extends R> work;
        private final StudyWatch watch;
        private final List<R> results;
        private final AtomicInteger next = new AtomicInteger();
        private final AtomicInteger done = new AtomicInteger();

        Family(List<C> cases, Function<? super C, ? extends R> work, StudyWatch watch) {
            this.cases = List.copyOf(cases);
            this.work = work;
            this.watch = watch;
            results = new ArrayList<>(Collections.nCopies(cases.size(), null));
        }

        void run() {
            try {
                for (int i = next.getAndIncrement(); i < cases.size(); i = next.getAndIncrement()) {
                    R result = work.apply(cases.get(i));
                    note(i, result);
                }
            } catch (RuntimeException fault) {
                next.set(cases.size());
                throw fault;
            }
        }

        private synchronized void note(int place, R result) {
            results.set(place, result);
            watch.done(done.incrementAndGet(), cases.size());
            if (watch.isStopped()) {
                throw new StudyStoppedException();
            }
        }

        List<R> results() {
            return List.copyOf(results);
        }
    }
}
