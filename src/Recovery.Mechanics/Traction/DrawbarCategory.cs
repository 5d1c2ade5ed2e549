namespace Recovery.Mechanics.Traction;

/// <summary>Category of an agricultural drawbar. It says which tractor the drawbar is made for, not what it holds.</summary>
public enum DrawbarCategory
{
    /// <summary>Category 0.</summary>
    Category0,

    /// <summary>Category 1.</summary>
    Category1,

    /// <summary>Category 2.</summary>
    Category2,

    /// <summary>Category 3.</summary>
    Category3,

    /// <summary>Category 4.</summary>
    Category4,

    /// <summary>Category 5.</summary>
    Category5,
}
