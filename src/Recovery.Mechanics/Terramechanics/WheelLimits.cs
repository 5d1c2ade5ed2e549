using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Limits that several wheel models share.</summary>
internal static class WheelLimits
{
    /// <summary>Load of the wheels that the fits rest on.</summary>
    public static readonly ValidityLimit Load = new("W", "wheel load of the tests behind the fit", 0, 60, "kN", TerramechanicsSources.TestedLoads);

    /// <summary>Range of the shear deformation modulus.</summary>
    public static readonly ValidityLimit ShearModulus = new("K", "shear deformation modulus", 0.01, 0.05, "m", TerramechanicsSources.ShearModulus);

    /// <summary>Slip that a machine is planned with.</summary>
    public static readonly ValidityLimit Slip = new("s", "slip", 0, CriticalIndexKernel.PlanningSlip, string.Empty, GeneralSources.Judgement);
}
