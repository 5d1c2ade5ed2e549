using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Mobility index of a running gear with all its factors, and the rating cone index it needs.</summary>
public sealed record MobilityResult
{
    internal MobilityResult(IModel model, bool tracks, double contactPressurePascals, double weightFactor, double gearFactor, double grouserFactor, double loadFactor, double clearanceFactor, double engineFactor, double transmissionFactor, double? deflectionCorrection, IReadOnlyList<Assumption> assumptions)
    {
        Model = model;
        IsTracked = tracks;
        ContactPressure = Pressure.FromPascals(contactPressurePascals);
        WeightFactor = weightFactor;
        GearFactor = gearFactor;
        GrouserFactor = grouserFactor;
        LoadFactor = loadFactor;
        ClearanceFactor = clearanceFactor;
        EngineFactor = engineFactor;
        TransmissionFactor = transmissionFactor;
        DeflectionCorrection = deflectionCorrection;
        Assumptions = assumptions;
        MobilityIndex = MobilityKernel.Index(contactPressurePascals, weightFactor, gearFactor, grouserFactor, loadFactor, clearanceFactor, engineFactor, transmissionFactor);
        OnePass = Pressure.FromPascals(tracks ? MobilityKernel.OnePassTracks(MobilityIndex) : MobilityKernel.OnePassWheels(MobilityIndex, deflectionCorrection!.Value));
        FiftyPasses = Pressure.FromPascals(tracks ? MobilityKernel.FiftyPassesTracks(MobilityIndex) : MobilityKernel.FiftyPassesWheels(MobilityIndex));
    }

    /// <summary>Gets the model.</summary>
    public IModel Model { get; }

    /// <summary>Gets whether this is a tracked running gear.</summary>
    public bool IsTracked { get; }

    /// <summary>Gets the nominal contact pressure; in psi the contact pressure factor CPF.</summary>
    public Pressure ContactPressure { get; }

    /// <summary>Gets the weight factor WF.</summary>
    public double WeightFactor { get; }

    /// <summary>Gets the tyre or track factor TF.</summary>
    public double GearFactor { get; }

    /// <summary>Gets the grouser factor GF.</summary>
    public double GrouserFactor { get; }

    /// <summary>Gets the wheel load factor WLF in kips, or the bogie factor BF of tracks.</summary>
    public double LoadFactor { get; }

    /// <summary>Gets the clearance factor CF.</summary>
    public double ClearanceFactor { get; }

    /// <summary>Gets the engine factor EF.</summary>
    public double EngineFactor { get; }

    /// <summary>Gets the transmission factor TrF.</summary>
    public double TransmissionFactor { get; }

    /// <summary>Gets the deflection correction DCF of wheels; null for tracks. It applies to one pass only.</summary>
    public double? DeflectionCorrection { get; }

    /// <summary>Gets the mobility index MI.</summary>
    public double MobilityIndex { get; }

    /// <summary>Gets the vehicle cone index for one pass, VCI1: the least rating cone index that lets the vehicle through once.</summary>
    public Pressure OnePass { get; }

    /// <summary>Gets the vehicle cone index for fifty passes, VCI50.</summary>
    public Pressure FiftyPasses { get; }

    /// <summary>Gets the limits that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; internal init; } = [];

    /// <summary>Gets what was filled in because it was not given.</summary>
    public IReadOnlyList<Assumption> Assumptions { get; }

    /// <summary>Tells whether a soil lets the vehicle through once: rating cone index at least VCI1.</summary>
    /// <param name="ratingConeIndex">Rating cone index of the critical layer for one pass, 0 to 20,000 kPa.</param>
    /// <returns>True for go.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">The index is outside its range.</exception>
    public bool GoesOnce(Pressure ratingConeIndex) => Guard.Pascals(ratingConeIndex, 0, 20000, nameof(ratingConeIndex)) >= OnePass.Pascals;

    /// <summary>Tells whether a soil lets the vehicle through fifty times: rating cone index at least VCI50.</summary>
    /// <param name="ratingConeIndex">Rating cone index of the critical layer for fifty passes, which can lie deeper than that for one, 0 to 20,000 kPa.</param>
    /// <returns>True for go.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">The index is outside its range.</exception>
    public bool GoesFiftyTimes(Pressure ratingConeIndex) => Guard.Pascals(ratingConeIndex, 0, 20000, nameof(ratingConeIndex)) >= FiftyPasses.Pascals;

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Mobility index and both vehicle cone indices.</returns>
    public override string ToString() =>
        "mobility index " + Text.Number(MobilityIndex, 3) + ", one pass " + Text.Kilopascals(OnePass.Pascals, 3) + ", fifty passes " + Text.Kilopascals(FiftyPasses.Pascals, 3) + (Flags.Count == 0 ? string.Empty : ", outside its range");
}
