using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>One figure as printed, in the coherent unit: a single value or a range.</summary>
/// <param name="Low">The lowest value.</param>
/// <param name="High">The highest value.</param>
/// <param name="Place">Where it stands.</param>
internal readonly record struct PrintedFigure(decimal Low, decimal High, Place Place)
{
    /// <summary>The other way to take a single value whose digits may be grouped; 0 when there is one way only.</summary>
    public decimal Other { get; init; }

    /// <summary>Whether letters stand in the figure for digits.</summary>
    public bool Doubtful { get; init; }

    /// <summary>Whether the figure is an apparent power, in VA.</summary>
    public bool IsApparent { get; init; }

    /// <summary>The figure as a range of a quantity.</summary>
    public QuantityRange<TUnit> As<TUnit>()
        where TUnit : struct, IUnit => new(new Quantity<TUnit>(Low), new Quantity<TUnit>(High));

    /// <summary>The figure with its highest value, as printed.</summary>
    public Figure<Quantity<TUnit>> AsStated<TUnit>()
        where TUnit : struct, IUnit => new(new Quantity<TUnit>(High), Origin.Stated);
}
