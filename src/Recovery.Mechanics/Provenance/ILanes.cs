#if NET
namespace Recovery.Mechanics.Provenance;

/// <summary>Several doubles at once, whatever the width of the processor: what kernels over arrays are written in, once for all widths.</summary>
internal interface ILanes<T>
    where T : struct, ILanes<T>
{
    static abstract int Count { get; }

    static abstract T Of(double value);

    static abstract T Read(ref double source, nuint offset);

    void Write(ref double target, nuint offset);

    static abstract T operator +(T a, T b);

    static abstract T operator -(T a, T b);

    static abstract T operator *(T a, T b);

    static abstract T operator /(T a, T b);

    static abstract T Sqrt(T a);

    static abstract T Log(T a);

    static abstract T Min(T a, T b);

    static abstract T Max(T a, T b);

    /// <summary>a b + c.</summary>
    static abstract T Fused(T a, T b, T c);

    /// <summary>All bits set where a is greater than b.</summary>
    static abstract T Above(T a, T b);

    static abstract T And(T a, T b);

    static abstract T Or(T a, T b);

    static abstract T Select(T mask, T whereSet, T otherwise);

    static abstract bool AllSet(T mask);

    /// <summary>a 2^n with n in the lowest bits of the mantissa of <paramref name="shifted"/>.</summary>
    static abstract T Scale(T a, T shifted);
}
#endif
