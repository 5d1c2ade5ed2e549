#if NET
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Recovery.Mechanics.Provenance;

/// <summary>Doubles in a vector of 128 bits.</summary>
internal readonly struct Lanes128(Vector128<double> v) : ILanes<Lanes128>
{
    private readonly Vector128<double> _v = v;

    public static int Count => Vector128<double>.Count;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 operator +(Lanes128 a, Lanes128 b) => new(a._v + b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 operator -(Lanes128 a, Lanes128 b) => new(a._v - b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 operator *(Lanes128 a, Lanes128 b) => new(a._v * b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 operator /(Lanes128 a, Lanes128 b) => new(a._v / b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 Of(double value) => new(Vector128.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 Read(ref double source, nuint offset) => new(Vector128.LoadUnsafe(ref source, offset));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 Sqrt(Lanes128 a) => new(Vector128.Sqrt(a._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 Log(Lanes128 a) => new(Vector128.Log(a._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 Min(Lanes128 a, Lanes128 b) => new(Vector128.MinNative(a._v, b._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 Max(Lanes128 a, Lanes128 b) => new(Vector128.MaxNative(a._v, b._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 Fused(Lanes128 a, Lanes128 b, Lanes128 c) => new(Vector128.MultiplyAddEstimate(a._v, b._v, c._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 Above(Lanes128 a, Lanes128 b) => new(Vector128.GreaterThan(a._v, b._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 And(Lanes128 a, Lanes128 b) => new(a._v & b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 Or(Lanes128 a, Lanes128 b) => new(a._v | b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 Select(Lanes128 mask, Lanes128 whereSet, Lanes128 otherwise) => new(Vector128.ConditionalSelect(mask._v, whereSet._v, otherwise._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool AllSet(Lanes128 mask) => Vector128.EqualsAll(mask._v.AsInt64(), Vector128<long>.AllBitsSet);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 Scale(Lanes128 a, Lanes128 shifted) => new((a._v.AsInt64() + (shifted._v.AsInt64() << 52)).AsDouble());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Write(ref double target, nuint offset) => _v.StoreUnsafe(ref target, offset);
}
#endif
