namespace Recovery.Mechanics.Rigging;

/// <summary>Grade of a chain: a tenth of the stress at break in N/mm2. A higher grade is not always a higher limit in a table: at 8 mm grade 70 is rated above grade 80.</summary>
public enum ChainGrade
{
    /// <summary>No mark that can be read: counts as grade 30 (49 CFR 393.108(d), primary).</summary>
    Unmarked,

    /// <summary>Grade 30.</summary>
    Grade30,

    /// <summary>Grade 43, rated at 2.5 to 3 times below its breaking strength.</summary>
    Grade43,

    /// <summary>Grade 70, transport chain, rated at 3.4 to 4 times below its breaking strength.</summary>
    Grade70,

    /// <summary>Grade 80, alloy.</summary>
    Grade80,

    /// <summary>Grade 100, alloy.</summary>
    Grade100,
}
