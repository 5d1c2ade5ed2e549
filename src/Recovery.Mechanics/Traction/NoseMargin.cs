using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>What the leading axle of a towing machine still carries while its wheels push and a line pulls: its own limit beside traction and power.</summary>
/// <remarks>
/// <para>N_f L = W_f L - F h_e - (T - F) h_cg for every F from 0 (just moving off) to the greatest line force; h_e = h_d + a_h tan(pitch). W_f front axle load on the grade where the machine stands, L wheelbase, h_d hitch height, a_h hitch behind the trailing axle, h_cg height of the centre of mass, T what the wheels can push (net of the grade).</para>
/// <para>N_f is linear in F: a line below the centre of mass is worst just moving off, one above it at the peak. A jerk therefore does not lift the nose of a machine hitched at its drawbar; what it reaches is the line, and a hitch above the centre of mass.</para>
/// <para>1 is lift, a Stop; above 0.8 a Caution. Pitch inertia and the rotation of wheels and driveline are left out; wheels that are dug in or chained and a clutch dropped at full throttle can exceed it; beyond lift the formula ends.</para>
/// <para>Source: statics (derived), levels judgement.</para>
/// </remarks>
public sealed record NoseMargin
{
    internal NoseMargin(string name, CapabilityFlat flat, double wheelForce, double lineForce)
    {
        Name = name;
        WheelForce = Force.FromNewtons(wheelForce);
        LineForce = Force.FromNewtons(lineForce);
        Start = NoseKernel.Ratio(flat.NoseMoment, flat.LineHeight, flat.CentreHeight, wheelForce, 0);
        AtLineForce = NoseKernel.Ratio(flat.NoseMoment, flat.LineHeight, flat.CentreHeight, wheelForce, lineForce);
        MomentNewtonMetres = flat.NoseMoment;
        LiftNewtons = NoseKernel.LiftAtPeak(flat.NoseMoment, flat.LineHeight, flat.CentreHeight, wheelForce);
        LineAboveCentre = flat.LineHeight > flat.CentreHeight;
    }

    /// <summary>Gets the name of the machine.</summary>
    public string Name { get; }

    /// <summary>Gets what the wheels push, net of the grade.</summary>
    public Force WheelForce { get; }

    /// <summary>Gets the greatest line force along the ground that was looked at.</summary>
    public Force LineForce { get; }

    /// <summary>Gets the share used up just moving off, before the line pulls.</summary>
    public double Start { get; }

    /// <summary>Gets the share used up at the greatest line force; negative where the line presses the nose down beyond its load at rest.</summary>
    public double AtLineForce { get; }

    /// <summary>Gets the greater of the two: 1 is lift.</summary>
    public double Worst => Math.Max(Start, AtLineForce);

    /// <summary>Gets whether the line of pull passes over the trailing axle above the centre of mass.</summary>
    public bool LineAboveCentre { get; }

    /// <summary>Gets the line force at which the nose lifts, for a line above the centre of mass; null for one below, where no line force does.</summary>
    public Force? LiftingLineForce => PullBound.Finite(LiftNewtons);

    /// <summary>Gets the objection: lift, light nose, or none.</summary>
    public IReadOnlyList<Finding> Findings => Judge(Worst) switch
    {
        null => [],
        Severity.Stop => [new Finding(TractionFindings.NoseLift, Name, Worst * MomentNewtonMetres / 1000, MomentNewtonMetres / 1000, "kN m")],
        _ => [new Finding(TractionFindings.NoseLight, Name, Worst * MomentNewtonMetres / 1000, MomentNewtonMetres / 1000, "kN m")],
    };

    private double MomentNewtonMetres { get; }

    private double LiftNewtons { get; }

    /// <summary>Gives the margin in words, invariant culture.</summary>
    /// <returns>Shares at both ends.</returns>
    public override string ToString() => Name + ": " + Text.Number(Start, 3) + " just moving off, " + Text.Number(AtLineForce, 3) + " at " + Text.Kilonewtons(LineForce.Newtons, 3) + " (1 is lift)";

    /// <summary>Level of a share; null where there is no objection.</summary>
    internal static Severity? Judge(double share) => share >= 1 ? Severity.Stop : share > NoseKernel.Caution ? Severity.Caution : null;
}
