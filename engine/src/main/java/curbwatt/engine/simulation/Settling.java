package curbwatt.engine.simulation;

import curbwatt.engine.event.EventKind;
import curbwatt.engine.simulation.book.RunBook;
import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.LoadBank;
import curbwatt.engine.vehicle.BusNode;

/** Solves the start of a step; what has no operating point falls silent, one circuit at a time. */
final class Settling {

    private final Stepping stepping;
    private final LoadBank bank;
    private final EngineState engine;
    private final RunBook book;

    Settling(Stepping stepping, LoadBank bank, EngineState engine, RunBook book) {
        this.stepping = stepping;
        this.bank = bank;
        this.engine = engine;
        this.book = book;
    }

    void settle(double timeS) {
        while (true) {
            switch (stepping.solveStart(timeS)) {
                case SOLVED -> {
                    return;
                }
                case CIRCUIT_COLLAPSED -> {
                    CircuitState failed = stepping.network().failedCircuit();
                    event(timeS, failed.circuit.name());
                    collapse(timeS, bank.circuits.indexOf(failed));
                }
                case NODE_COLLAPSED -> {
                    BusNode node = stepping.network().failedNode();
                    event(timeS, node == BusNode.STARTER ? "node" : "equipment node");
                    fallSilent(timeS, node);
                }
            }
        }
    }

    private void event(double timeS, String subject) {
        book.event(timeS, EventKind.VOLTAGE_COLLAPSED, subject, stepping.start.starter.nodeV, stepping.starterCharge());
    }

    /** Takes everything off a node that has no operating point: its circuits, and then the starter. */
    private void fallSilent(double timeS, BusNode node) {
        boolean fed = false;
        for (int c = 0; c < bank.circuits.size(); c++) {
            if (bank.circuits.get(c).circuit.node() == node) {
                fed |= bank.circuits.get(c).isFed();
                collapse(timeS, c);
            }
        }
        if (!fed && !engine.letGoOfStarter(timeS)) {
            throw new IllegalStateException(
                    "no operating point at " + timeS + " s with nothing left on the " + node + " node");
        }
    }

    private void collapse(double timeS, int place) {
        CircuitState circuit = bank.circuits.get(place);
        if (circuit.isFed()) {
            bank.collapse(circuit, timeS);
            book.lost(place, timeS, circuit.circuit.name());
        }
    }
}
