using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Loads of tie-down provisions for transport, MIL-STD-209K Table I (primary). Transport, not towing or recovery.</summary>
public sealed record TieDownLoads
{
    internal TieDownLoads(double grossKilograms) => WeightNewtons = AttachmentKernel.Weight(grossKilograms);

    /// <summary>Gets the limit fore and aft, shared by two provisions.</summary>
    public Force ForeAft => Force.FromNewtons(AttachmentKernel.TieForeAft * WeightNewtons);

    /// <summary>Gets the limit downwards.</summary>
    public Force Down => Force.FromNewtons(AttachmentKernel.TieDown * WeightNewtons);

    /// <summary>Gets the limit sideways.</summary>
    public Force Sideways => Force.FromNewtons(AttachmentKernel.TieSide * WeightNewtons);

    /// <summary>Gets the ultimate fore and aft.</summary>
    public Force ForeAftUltimate => Force.FromNewtons(AttachmentKernel.TieUltimate * AttachmentKernel.TieForeAft * WeightNewtons);

    private double WeightNewtons { get; }

    /// <summary>Gives the loads in one line, invariant culture.</summary>
    /// <returns>Fore and aft, down, sideways.</returns>
    public override string ToString() => "fore and aft " + Text.Kilonewtons(ForeAft.Newtons) + ", down " + Text.Kilonewtons(Down.Newtons) + ", sideways " + Text.Kilonewtons(Sideways.Newtons);
}
