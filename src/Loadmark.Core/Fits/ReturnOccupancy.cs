using Loadmark.Core.Gear;

namespace Loadmark.Core.Fits;

/// <summary>
/// The loads that meet on one return, be it that of a lead, of outlets that share it, or of a winding: the one judgement in the program of
/// what they do to one another.
/// </summary>
public struct ReturnOccupancy : IEquatable<ReturnOccupancy>
{
    private int _digital;
    private int _isolating;
    private int _positive;
    private int _unknown;
    private int _onWinding;
    private int _meetsWindings;

    /// <summary>How many loads there are.</summary>
    public int Count { get; private set; }

    /// <summary>
    /// Whether their grounds may meet over the audio leads: no where some are positive and some negative, which shorts the supply; not
    /// known where that of one is not known.
    /// </summary>
    public readonly Fit Grounds
    {
        get
        {
            var direct = Count - _onWinding;
            if (direct < 2)
                return Fit.Yes;
            if (_positive > 0 && _positive + _unknown < direct)
                return Fit.No;
            return _unknown > 0 ? Fit.NotKnown : Fit.Yes;
        }
    }

    /// <summary>
    /// Whether a winding feeds one load only of those whose grounds meet. No where it feeds several: each rectifies for itself, so the
    /// grounds of two stand at different ends of the winding in turn, and the audio screens short it. Not known where one is on the winding
    /// and others take direct current from the same return: their ground may be an end of the winding too, or be rectified from it.
    /// </summary>
    public readonly Fit Windings => _onWinding > 1 ? Fit.No : _onWinding == 1 && _meetsWindings > 0 ? Fit.NotKnown : Fit.Yes;

    /// <summary>Whether nothing here could be harmed by the others.</summary>
    public readonly Fit Harmless => (Fit)Math.Max((int)Grounds, (int)Windings);

    /// <summary>Whether a digital load shares with others.</summary>
    public readonly bool SharesDigital => Count > 1 && _digital > 0;

    /// <summary>Whether a load that wants a return of its own shares one.</summary>
    public readonly bool SharesIsolating => Count > 1 && _isolating > 0;

    /// <summary>How many findings of noise come of the return's loads.</summary>
    public readonly int NoiseFindings => (SharesDigital ? 1 : 0) + (SharesIsolating ? 1 : 0);

    /// <summary>Whether one more load could come without harm to anything, as far as is known.</summary>
    /// <param name="occupant">The load.</param>
    public readonly bool Suits(Occupant occupant)
    {
        var with = this;
        with.Change(occupant, 1);
        return with.Harmless == Fit.Yes;
    }

    /// <summary>A load comes, or goes.</summary>
    /// <param name="occupant">The load.</param>
    /// <param name="sign">1 or -1; more of the same at once by a multiple.</param>
    public void Change(Occupant occupant, int sign)
    {
        if (occupant.IsUnheard)
            return;
        Count += sign;
        _digital += occupant.IsDigital ? sign : 0;
        _isolating += occupant.Isolates ? sign : 0;
        _meetsWindings += occupant.MeetsWindings ? sign : 0;
        if (occupant.IsOnWinding)
            _onWinding += sign;
        else if (occupant.Ground is null)
            _unknown += sign;
        else if (occupant.Ground == GroundSide.Positive)
            _positive += sign;
    }

    /// <inheritdoc/>
    public readonly bool Equals(ReturnOccupancy other) =>
        (Count, _digital, _isolating, _positive, _unknown, _onWinding, _meetsWindings)
        == (other.Count, other._digital, other._isolating, other._positive, other._unknown, other._onWinding, other._meetsWindings);

    /// <inheritdoc/>
    public override readonly bool Equals(object? obj) => obj is ReturnOccupancy other && Equals(other);

    /// <inheritdoc/>
    public override readonly int GetHashCode() =>
        HashCode.Combine(Count, _digital, _isolating, _positive, _unknown, _onWinding, _meetsWindings);

    /// <summary>Whether both are occupied alike.</summary>
    public static bool operator ==(ReturnOccupancy left, ReturnOccupancy right) => left.Equals(right);

    /// <summary>Whether both are occupied differently.</summary>
    public static bool operator !=(ReturnOccupancy left, ReturnOccupancy right) => !left.Equals(right);
}
