#if NET
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Recovery.Mechanics.Provenance;

/// <summary>Doubles in a vector of 256 bits.</summary>
internal readonly struct Lanes256(Vector256<double> v) : ILanes<Lanes256>
{
    private readonly Vector256<double> _v = v;

    public static int Count => Vector256<double>.Count;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 operator +(Lanes256 a, Lanes256 b) => new(a._v + b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 operator -(Lanes256 a, Lanes256 b) => new(a._v - b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 operator *(Lanes256 a, Lanes256 b) => new(a._v * b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 operator /(Lanes256 a, Lanes256 b) => new(a._v / b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 Of(double value) => new(Vector256.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 Read(ref double source, nuint offset) => new(Vector256.LoadUnsafe(ref source, offset));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 Sqrt(Lanes256 a) => new(Vector256.Sqrt(a._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 Log(Lanes256 a) => new(Vector256.Log(a._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 Min(Lanes256 a, Lanes256 b) => new(Vector256.MinNative(a._v, b._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 Max(Lanes256 a, Lanes256 b) => new(Vector256.MaxNative(a._v, b._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 Fused(Lanes256 a, Lanes256 b, Lanes256 c) => new(Vector256.MultiplyAddEstimate(a._v, b._v, c._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 Above(Lanes256 a, Lanes256 b) => new(Vector256.GreaterThan(a._v, b._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 And(Lanes256 a, Lanes256 b) => new(a._v & b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 Or(Lanes256 a, Lanes256 b) => new(a._v | b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 Select(Lanes256 mask, Lanes256 whereSet, Lanes256 otherwise) => new(Vector256.ConditionalSelect(mask._v, whereSet._v, otherwise._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool AllSet(Lanes256 mask) => Vector256.EqualsAll(mask._v.AsInt64(), Vector256<long>.AllBitsSet);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 Scale(Lanes256 a, Lanes256 shifted) => new((a._v.AsInt64() + (shifted._v.AsInt64() << 52)).AsDouble());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Write(ref double target, nuint offset) => _v.StoreUnsafe(ref target, offset);
}
#endif
