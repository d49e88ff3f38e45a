package curbwatt.charts.page;

import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Which work is under way for which tab. A tab has one piece of work of a kind at a time: the newest stops the one before
 * it. What is done is forgotten.
 */
final class TabWork {

    private final ConcurrentMap<String, Ticket> newest = new ConcurrentHashMap<>();

    /**
     * A piece of work.
     *
     * @param owner tab and kind of work
     * @param superseded whether something newer took its place
     */
    record Ticket(String owner, AtomicBoolean superseded) {}

    /** Begins work for a tab; work of the same kind that is under way for it stops. */
    Ticket begin(String kind, Optional<String> tab) {
        Ticket ticket = new Ticket(kind + " " + tab.orElse(""), new AtomicBoolean());
        if (tab.isPresent()) {
            Ticket before = newest.put(ticket.owner(), ticket);
            if (before != null) {
                before.superseded().set(true);
            }
        }
        return ticket;
    }

    /** Forgets work that is done. */
    void end(Ticket ticket) {
        newest.remove(ticket.owner(), ticket);
    }

    /** How many pieces of work are under way. */
    int size() {
        return newest.size();
    }
}
