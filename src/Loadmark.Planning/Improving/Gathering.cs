using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Improving;

/// <summary>The loads that meet on one return, as far as grounds and noise care.</summary>
internal struct Gathering
{
    private int _signal;
    private int _digital;
    private int _isolate;
    private int _positive;

    /// <summary>How many loads there are.</summary>
    public int Count { get; private set; }

    /// <summary>What the rules would say of it, in findings of noise.</summary>
    public readonly int Findings => Count < 2 ? 0 : (_digital > 0 ? 1 : 0) + (_isolate > 0 ? 1 : 0) + (_signal > 1 ? 1 : 0);

    /// <summary>Whether a load's ground suits those that are there.</summary>
    public readonly bool Suits(bool isPositive) => Count == 0 || (isPositive ? _positive == Count : _positive == 0);

    /// <summary>A load comes, or goes.</summary>
    /// <param name="load">Its group.</param>
    /// <param name="sign">1 or -1.</param>
    public void Change(LoadGroup load, int sign) => Change(load.IsInSignal, load.Rating.IsDigital == true, load.Rating.Load.Isolate, load.IsPositiveGround, sign);

    /// <summary>A load comes, or goes.</summary>
    public void Change(bool isInSignal, bool isDigital, bool isolates, bool isPositive, int sign)
    {
        Count += sign;
        _signal += isInSignal ? sign : 0;
        _digital += isDigital ? sign : 0;
        _isolate += isolates ? sign : 0;
        _positive += isPositive ? sign : 0;
    }
}
