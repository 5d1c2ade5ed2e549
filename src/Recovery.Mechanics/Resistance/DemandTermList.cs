using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>Names the terms of three sums.</summary>
internal static class DemandTermList
{
    public static IReadOnlyList<DemandTerm> From(in DemandBounds b, FaceMethod face)
    {
        var terms = new List<DemandTerm>(10);
        Add(terms, TermPhrases.Roll, b.Low.Roll, b.Central.Roll, b.High.Roll, ResistanceSources.Composition);
        Add(terms, TermPhrases.Base, b.Low.Base, b.Central.Base, b.High.Base, ResistanceSources.Composition);
        Add(terms, TermPhrases.Side, b.Low.Side, b.Central.Side, b.High.Side, ResistanceSources.Composition);
        Add(terms, TermPhrases.Face, b.Low.Face, b.Central.Face, b.High.Face, face.Source);
        Add(terms, TermPhrases.Suction, b.Low.Suction, b.Central.Suction, b.High.Suction, ResistanceSources.Suction);
        Add(terms, TermPhrases.Model, b.Low.Model, b.Central.Model, b.High.Model, Terramechanics.TerramechanicsSources.BrixiusRadial);
        Add(terms, TermPhrases.Belly, b.Low.Belly, b.Central.Belly, b.High.Belly, ResistanceSources.Composition);
        Add(terms, TermPhrases.Lift, b.Low.Lift, b.Central.Lift, b.High.Lift, ResistanceSources.Composition);
        Add(terms, TermPhrases.Climb, b.Low.Climb, b.Central.Climb, b.High.Climb, GeneralSources.Statics);
        Add(terms, TermPhrases.Grade, b.Low.Grade, b.Central.Grade, b.High.Grade, GeneralSources.Statics);
        return terms.AsReadOnly();
    }

    private static void Add(List<DemandTerm> terms, PhraseTemplate name, double low, double central, double high, Source source)
    {
        if (low != 0 || central != 0 || high != 0) terms.Add(new DemandTerm(name, low, central, high, source));
    }
}
