package curbwatt.engine.simulation;
import curbwatt.engine.control.*; import curbwatt.engine.load.*; import curbwatt.engine.vehicle.*; import curbwatt.engine.scene.*; import curbwatt.engine.simulation.record.*; import java.util.*;
public class Sp { 
    private static Vehicle farSensing() {
        Load radio = new Load("radio", 10, 13.6, -1, 0, DropOut.never(), new LoadPattern.Duty(3, 60, 10, 0), Set.of());
        Circuit equipment = new Circuit("equipment", 0.022, List.of( Vehicles.steady("dock", 6, -1), Vehicles.flashing("bar 1", 12, -1, 500, 200, 0), Vehicles.flashing("bar 2", 12, -1, 500, 200, 250), radio));
        Circuit chassis = new Circuit("chassis", 0, List.of(Vehicles.steady("chassis", 1.5, 1)));
        LowVoltageCutoff cutoff = new LowVoltageCutoff( "cutoff", new SensePoint.FeedEnd("equipment"), 0, 0, OptionalDouble.of(8), 7.8, 20, new RecloseRule.ByHand(), OptionalDouble.empty(), Set.of("equipment"));
        return Vehicles.vehicle(Vehicles.agm92(), List.of(equipment, chassis), cutoff);
    }
 public static void main(String[] a){ for(double t: new double[]{70,130,250,600,613,630,671,1200,2400,3600,5000,5011,5040,6000}) { double[] v=new double[3]; double[] c=new double[3]; int i=0; for (var f: List.of(Fidelity.RESOLVED, Fidelity.ENVELOPE)) { var r=Simulation.of(farSensing(), Vehicles.scene(1,25,Vehicles.off(t,25),new Phase("off2", curbwatt.engine.powertrain.EngineMode.OFF, 1, 25, curbwatt.engine.powertrain.EngineSpeed.constant(0), Set.of()))).run(Recorder.none(), f==Fidelity.RESOLVED? new StepControl(1e-4,1e-7,1.5):StepControl.usual(), f); var e=r.events().get(r.events().size()-1); v[i]=e.voltageV(); c[i++]=r.endChargeFraction(); }
 System.out.printf("%.0f  V %.7f  off %.2f µV  charge off %.2e%n",t,v[0],(v[1]-v[0])*1e6,c[1]-c[0]); } } }
