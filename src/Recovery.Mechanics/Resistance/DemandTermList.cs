using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>Names the terms of three sums.</summary>
internal static class DemandTermList
{
    public static IReadOnlyList<DemandTerm> From(in DemandBounds b, FaceMethod face)
    {
        var terms = new List<DemandTerm>(10);
        Add(terms, "roll", "rolling of buried wheels", b.Low.Roll, b.Central.Roll, b.High.Roll, ResistanceSources.Composition);
        Add(terms, "base", "locked wheels sliding", b.Low.Base, b.Central.Base, b.High.Base, ResistanceSources.Composition);
        Add(terms, "side", "mud on tyre walls", b.Low.Side, b.Central.Side, b.High.Side, ResistanceSources.Composition);
        Add(terms, "face", "soil ahead of buried wheels", b.Low.Face, b.Central.Face, b.High.Face, face.Source);
        Add(terms, "suction", "suction behind buried wheels", b.Low.Suction, b.Central.Suction, b.High.Suction, ResistanceSources.Suction);
        Add(terms, "model", "wheels by the wheel model", b.Low.Model, b.Central.Model, b.High.Model, Terramechanics.TerramechanicsSources.BrixiusRadial);
        Add(terms, "belly", "belly drag", b.Low.Belly, b.Central.Belly, b.High.Belly, ResistanceSources.Composition);
        Add(terms, "lift", "lifting the sealed belly", b.Low.Lift, b.Central.Lift, b.High.Lift, ResistanceSources.Composition);
        Add(terms, "climb", "climb out of the hole", b.Low.Climb, b.Central.Climb, b.High.Climb, GeneralSources.Statics);
        Add(terms, "grade", "grade", b.Low.Grade, b.Central.Grade, b.High.Grade, GeneralSources.Statics);
        return terms.AsReadOnly();
    }

    private static void Add(List<DemandTerm> terms, string key, string name, double low, double central, double high, Source source)
    {
        if (low != 0 || central != 0 || high != 0) terms.Add(new DemandTerm(key, name, low, central, high, source));
    }
}
