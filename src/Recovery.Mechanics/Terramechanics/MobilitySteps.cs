using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>The steps of the mobility index that wheels and tracks share.</summary>
internal static class MobilitySteps
{
    /// <summary>Adds the factors and the index.</summary>
    public static WorkingBuilder Of(WorkingBuilder working, MobilityResult r, string pressure, string pressureNumbers, string weightRule, string gear, string loadMeaning)
    {
        string cpf = Text.Number(r.ContactPressure.Pascals / PhysicalConstants.PascalsPerPsi), wf = Text.Number(r.WeightFactor), tf = Text.Number(r.GearFactor), gf = Text.Number(r.GrouserFactor);
        string lf = Text.Number(r.LoadFactor), cf = Text.Number(r.ClearanceFactor), ef = Text.Number(r.EngineFactor), trf = Text.Number(r.TransmissionFactor);
        var source = TerramechanicsSources.MobilityIndex;
        return working
            .Step("CPF", "contact pressure factor, psi", pressure, pressureNumbers, cpf, source)
            .Step("WF", "weight factor", weightRule, weightRule, wf, source)
            .Step("TF", r.IsTracked ? "track factor" : "tyre factor, b in inches", gear, gear, tf, source)
            .Step("GF", "grouser factor", r.IsTracked ? "1.1 above 1.5 in, else 1.0" : "1.05 with chains or grousers, else 1.00", gf, gf, source)
            .Step(r.IsTracked ? "BF" : "WLF", loadMeaning, r.IsTracked ? "(W/10)/(bogies x shoe area), lb and in2" : "W/n", lf, lf, source)
            .Step("CF", "clearance factor", "clearance in inches/10", cf, cf, source)
            .Step("EF", "engine factor", "1.00 from 10 hp per short ton, else 1.05", ef, ef, source)
            .Step("TrF", "transmission factor", "1.05 manual, else 1.00", trf, trf, source)
            .Step("MI", "mobility index", r.IsTracked ? "(CPF WF/(TF GF) + BF - CF) EF TrF" : "(CPF WF/(TF GF) + WLF - CF) EF TrF", $"({cpf} x {wf}/({tf} x {gf}) + {lf} - {cf}) x {ef} x {trf}", Text.Number(r.MobilityIndex), source);
    }
}
