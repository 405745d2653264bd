using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Fits;

/// <summary>What a load is to others that share a return with it.</summary>
/// <param name="IsDigital">Whether it is known to be digital.</param>
/// <param name="Isolates">Whether it wants a return of its own.</param>
/// <param name="Ground">The side of its supply that its ground is on; null when that is not known. Meaningless where
/// <see cref="IsOnWinding"/>.</param>
/// <param name="TakesAlternating">Whether it is fed alternating current; no where the kind of current is not known.</param>
/// <param name="JoinsGrounds">Whether its ground meets those of others over audio leads; matters only beside alternating current.</param>
/// <param name="IsUnheard">Whether it counts for nothing there.</param>
public readonly record struct Occupant(
    bool IsDigital, bool Isolates, GroundSide? Ground, bool TakesAlternating, bool JoinsGrounds, bool IsUnheard = false)
{
    /// <summary>A supply that is fed from there: what it feeds may be heard, itself it is not.</summary>
    public static Occupant Unheard { get; } = new(false, false, null, false, false, IsUnheard: true);

    /// <summary>Whether it makes a finding of noise of any return that it shares.</summary>
    public bool MindsCompany => IsDigital || Isolates;

    /// <summary>
    /// The load as one that may share a return with nobody if it minds company: as if its ground were not known, and met those of others.
    /// That forbids just what would be a finding of noise.
    /// </summary>
    public Occupant KeptApart => MindsCompany && !IsUnheard
        ? this with { Ground = null, TakesAlternating = false, JoinsGrounds = true }
        : this;

    /// <summary>Whether the load is fed alternating current and its ground meets those of others.</summary>
    public bool IsOnWinding => TakesAlternating && JoinsGrounds;

    /// <summary>Whether the load is fed direct current and its ground, which is one side of the return, meets those of others.</summary>
    public bool MeetsWindings => !TakesAlternating && JoinsGrounds;

    /// <summary>A load on a return.</summary>
    /// <param name="load">The load.</param>
    /// <param name="isReversed">Whether its lead exchanges centre and sleeve: a ground that is only taken for granted is then not
    /// known.</param>
    /// <param name="form">What it is fed.</param>
    /// <param name="isInSignal">Whether it is in the signal path, as far as the rig gives one.</param>
    public static Occupant Of(LoadRating load, bool isReversed, SupplyForm form, bool isInSignal)
    {
        var isKnown = load.Ground.IsKnown && !(isReversed && load.Ground.IsAssumed);
        return new Occupant(
            load.IsDigital == true, load.Load.Isolate, isKnown ? load.Ground.Value : null, form == SupplyForm.Alternating, isInSignal);
    }
}
