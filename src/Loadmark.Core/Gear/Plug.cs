namespace Loadmark.Core.Gear;

/// <summary>A connector for low voltage by its size, such as <c>5.5x2.1</c> (outer × inner diameter in mm).</summary>
/// <param name="Name">The name in the program's own spelling: <c>5.5x2.1</c>, <c>3.5 mm jack</c>, or any other as typed.</param>
public readonly record struct Plug(string Name)
{
    /// <summary>The coaxial plug that most pedals take: 5.5 mm outside, for a pin of 2.1 mm (IEC 60130-10 type A).</summary>
    public static Plug Common { get; } = new("5.5x2.1");

    /// <summary>The same outside for a pin of 2.5 mm (IEC 60130-10 type A).</summary>
    public static Plug WidePin { get; } = new("5.5x2.5");

    /// <inheritdoc/>
    public override string ToString() => Name;
}
