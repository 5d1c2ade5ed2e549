using System;
using System.Collections.Generic;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>Wheel loads of a machine on ground that slopes along and across; <see cref="Machine.WheelLoads"/> and its worked steps.</summary>
internal static class SideSlope
{
    public static WheelLoads Of(Machine machine, Grade grade, Grade side, PullDirection direction, Suspension suspension)
    {
        var axles = machine.Axles;
        var n = axles.Count;
        double normal = machine.WeightNewtons * RollKernel.NormalShare(grade.Radians, side.Radians);
        var loads = machine.Share(normal * (machine.CentreX - (Machine.Sign(direction) * machine.CentreZ * Math.Tan(grade.Radians))), normal, suspension);
        double[] track = new double[n], pin = new double[n], left = new double[n], right = new double[n], load = new double[n];
        var pinned = false;
        var rigid = false;
        for (var i = 0; i < n; i++)
        {
            load[i] = loads.Newtons[i];
            track[i] = axles[i].TrackWidth.Meters;
            pin[i] = axles[i].PinHeight?.Meters ?? double.NaN;
            pinned |= axles[i].PinHeight is not null;
            rigid |= axles[i].PinHeight is null;
        }

        if (!rigid) throw new ArgumentException("Every axle of " + machine.Name + " hangs on a pin: one at least has to hold the machine upright. Leave the pin height of that axle out.", nameof(machine));
        var moment = RollKernel.Moment(normal, machine.CentreZ, machine.CentreLeft, side.Radians);
        var unheld = RollKernel.Share(load, track, pin, side.Radians, moment, right);
        var findings = new List<Finding>();
        for (var i = 0; i < n; i++)
        {
            left[i] = load[i] - right[i];
            if (unheld == 0 && load[i] > 0 && Math.Min(left[i], right[i]) <= 1e-9 * load[i]) findings.Add(new Finding(MachinesFindings.WheelLifts, axles[i].Name));
        }

        var ratio = Ratio(load, track, pin, side.Radians, moment);
        if (unheld != 0) findings.Add(new Finding(MachinesFindings.Tips, machine.Name, ratio, 1));
        IReadOnlyList<Assumption> assumed = pinned || (side.Radians == 0 && machine.CentreLeft == 0) ? [] : [Rigid];
        return new WheelLoads(loads, Array.AsReadOnly(left), Array.AsReadOnly(right), ratio, assumed, findings.AsReadOnly());
    }

    public static Working Explain(Machine machine, Grade grade, Grade side, PullDirection direction)
    {
        var wheels = Of(machine, grade, side, direction, Suspension.Undeclared);
        double c = RollKernel.NormalShare(grade.Radians, side.Radians), n = machine.WeightNewtons * c, k = RollKernel.Moment(n, machine.CentreZ, machine.CentreLeft, side.Radians);
        string a = Text.Number(side.Radians * 180 / Math.PI) + " deg", theta = Text.Number(grade.Radians * 180 / Math.PI) + " deg";
        var working = new WorkingBuilder("Wheel loads of " + machine.Name + " on a side slope")
            .Step("N", "what the axles carry together", "W/sqrt(1 + tan^2(theta) + tan^2(a))", Text.Kilonewtons(machine.WeightNewtons) + ", theta " + theta + ", a " + a, Text.Kilonewtons(n), GeneralSources.Statics)
            .Step("K", "moment that loads the right wheels", "N (z_c tan(a) - y_c)", Text.Kilonewtons(n) + " (" + Text.Number(machine.CentreZ) + " tan(" + a + ") - " + Text.Number(machine.CentreLeft) + ")", Text.With(k / 1000, "kN m"), GeneralSources.Statics);
        for (var i = 0; i < machine.Axles.Count; i++)
        {
            var load = wheels.AxleLoads.Newtons[i];
            working.Step("R_" + Text.Number(i + 1), "right wheels of the " + machine.Axles[i].Name + (machine.Axles[i].PinHeight is null ? ", rigid" : ", on a pin"), "N_i/2 + K_i/B_i", Text.Kilonewtons(load) + "/2 + " + Text.Number((wheels.RightNewtons[i] - (load / 2)) * machine.Axles[i].TrackWidth.Meters / 1000) + "/" + Text.Number(machine.Axles[i].TrackWidth.Meters), Text.Kilonewtons(wheels.RightNewtons[i]), GeneralSources.Judgement);
        }

        return working.Build();
    }

    private static readonly Assumption Rigid = new("assume.axle-pin", "how each axle holds the machine upright", "rigid in roll, every axle", "A rear axle on a pin leaves nearly all of the side moment to the front axle: its lower wheel carries more and its upper one lifts sooner.", GeneralSources.Judgement);

    private static double Ratio(double[] load, double[] track, double[] pin, double sideRadians, double moment)
    {
        double most = 0, rest = moment;
        for (var i = 0; i < load.Length; i++)
        {
            if (double.IsNaN(pin[i])) most += load[i] * track[i] / 2;
            else rest -= RollKernel.Pinned(load[i], track[i], pin[i], sideRadians);
        }

        return Math.Abs(rest) / most;
    }
}
