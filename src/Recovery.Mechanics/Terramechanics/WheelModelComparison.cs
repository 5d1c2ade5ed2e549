using System;
using System.Collections.Generic;
using System.Text;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>All models of motion resistance side by side on the same wheels and the same soil, each with its flags, and the spread between them.</summary>
/// <remarks>
/// <para>On firm ground the wheel-numeric models agree; on soft ground they do not, down to one that gives a number and another that says immobile. A single number on soft soil is not defensible.</para>
/// <para>The cone index is that which every model is fed with: on fine-grained soil the rating cone index. Bekker's parameters are another measure of the soil; the entry says which cone index they imply.</para>
/// <para>Every number is present or refused with its reason, never filled in. All models describe a wheel on the ground or in a shallow rut: none has belly drag, suction or rut walls in it.</para>
/// </remarks>
public sealed class WheelModelComparison
{
    /// <summary>Width of a screen.</summary>
    private const int TableColumns = 80;

    private WheelModelComparison(IReadOnlyList<WheelSet> wheels, ComparisonInputs inputs)
    {
        Wheels = wheels;
        Inputs = inputs;
        double load = 0;
        foreach (var set in wheels) load += set.LoadNewtons;
        Load = Force.FromNewtons(load);
        Entries = ComparisonBuilder.All(wheels, inputs, load);
    }

    /// <summary>Gets the wheels.</summary>
    public IReadOnlyList<WheelSet> Wheels { get; }

    /// <summary>Gets what was given beside them.</summary>
    public ComparisonInputs Inputs { get; }

    /// <summary>Gets the load of all wheels.</summary>
    public Force Load { get; }

    /// <summary>Gets what each model says.</summary>
    public IReadOnlyList<WheelModelEntry> Entries { get; }

    /// <summary>Gets the spread over all models that give a resistance; null where none does.</summary>
    public ModelSpread? Spread => SpreadOf(_ => true);

    /// <summary>Gets the spread over the models that are within their range; null where none is.</summary>
    public ModelSpread? SpreadInRange => SpreadOf(e => e.InRange);

    /// <summary>Compares all models on one driven wheel.</summary>
    /// <param name="wheel">The wheel, its load and its soil.</param>
    /// <param name="inputs">What some models ask besides; nothing unless said.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentNullException">The wheel is null.</exception>
    public static WheelModelComparison OfWheel(WheelOnSoil wheel, ComparisonInputs? inputs = null) => OfMachine([new WheelSet(wheel, 1)], inputs);

    /// <summary>Compares all models on the wheels of a machine, summed.</summary>
    /// <param name="wheels">All wheels of the machine, set by set, each on its soil.</param>
    /// <param name="inputs">What some models ask besides; nothing unless said.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentNullException">The wheels are null.</exception>
    /// <exception cref="ArgumentException">There are no wheels.</exception>
    public static WheelModelComparison OfMachine(IReadOnlyList<WheelSet> wheels, ComparisonInputs? inputs = null)
    {
        SelfMobility.CheckWheels(wheels);
        return new WheelModelComparison(new List<WheelSet>(wheels).AsReadOnly(), inputs ?? ComparisonInputs.None);
    }

    /// <summary>Finds the entry of a model.</summary>
    /// <param name="model">The model.</param>
    /// <returns>Its entry.</returns>
    /// <exception cref="ArgumentException">The model is not in the comparison.</exception>
    public WheelModelEntry this[IModel model]
    {
        get
        {
            foreach (var entry in Entries)
            {
                if (ReferenceEquals(entry.Model, model)) return entry;
            }

            throw new ArgumentException("The comparison has no model '" + Guard.NotNull(model, nameof(model)).Name + "'.", nameof(model));
        }
    }

    /// <summary>Gives the spread over a choice of models.</summary>
    /// <param name="which">Tells whether a model belongs to the choice.</param>
    /// <returns>The spread; null where none of the choice gives a resistance.</returns>
    /// <exception cref="ArgumentNullException">The choice is null.</exception>
    public ModelSpread? SpreadOf(Func<WheelModelEntry, bool> which)
    {
        Guard.NotNull(which, nameof(which));
        double low = double.PositiveInfinity, high = 0;
        int models = 0, refused = 0;
        foreach (var entry in Entries)
        {
            if (!which(entry)) continue;
            if (entry.MotionResistanceHigh is not { } top)
            {
                refused++;
                continue;
            }

            models++;
            low = Math.Min(low, entry.MotionResistanceLow!.Value.Newtons);
            high = Math.Max(high, top.Newtons);
        }

        return models == 0 ? null : new ModelSpread(low, high, models, refused);
    }

    /// <summary>Gives the comparison as a table of plain text for a screen of 80 columns, invariant culture.</summary>
    /// <returns>One line a model, reasons below; line feeds.</returns>
    public string ToTable()
    {
        var text = new StringBuilder("model                        rolling kN    of load    net kN  moves from  range\n");
        var notes = new StringBuilder();
        foreach (var e in Entries)
        {
            var rolling = e.MotionResistanceHigh is { } high ? WheelModelEntry.Band(e.MotionResistanceLow!.Value, high) : "-";
            var share = e.MotionResistanceRatioHigh is { } top ? (e.MotionResistanceRatioLow < top * (1 - 1e-6) ? Text.Fixed(e.MotionResistanceRatioLow.Value, 2) + "-" : string.Empty) + Text.Fixed(top, 2) : "-";
            text.Append(e.Model.Name.PadRight(26)).Append(rolling.PadLeft(13)).Append(share.PadLeft(11))
                .Append((e.NetTraction is { } net ? Text.Number(net.Kilonewtons, 3) : "-").PadLeft(10))
                .Append((e.CriticalConeIndex is { } index ? Text.Number(index.Kilopascals, 3) + " kPa" : "-").PadLeft(12))
                .Append("  ").Append(e.MotionResistanceHigh is null ? "none" : e.Flags.Count == 0 ? "in" : "out").Append('\n');
            Note(notes, e, e.ResistanceRefusal);
            if (e.ResistanceRefusal.Length == 0 && e.TractionRefusal != ComparisonBuilder.NoTraction) Note(notes, e, e.TractionRefusal);
            if (e.MotionResistanceHigh is not null && e.Flags.Count > 0) Note(notes, e, "out: " + Symbols(e.Flags));
            Note(notes, e, e.Remark);
        }

        if (Spread is { } spread) text.Append("spread: ").Append(spread).Append('\n');
        return text.Append(notes).ToString();
    }

    /// <summary>Gives the comparison in one line, invariant culture.</summary>
    /// <returns>The load and the spread.</returns>
    public override string ToString() => Text.Kilonewtons(Load.Newtons, 3) + " on wheels: " + (Spread?.ToString() ?? "no model gives a resistance");

    private static string Symbols(IReadOnlyList<ValidityFlag> flags)
    {
        var text = new StringBuilder();
        foreach (var flag in flags) text.Append(text.Length == 0 ? string.Empty : ", ").Append(flag.Limit.Symbol).Append(' ').Append(Text.With(flag.Value, flag.Limit.Unit, 3));
        return text.ToString();
    }

    private static void Note(StringBuilder notes, WheelModelEntry entry, string note)
    {
        if (note.Length > 0) notes.Append(' ').Append(string.Join("\n   ", Text.Wrap(entry.Model.Name + ": " + note, TableColumns - 1, hanging: 2))).Append('\n');
    }
}
