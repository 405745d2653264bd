using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Analyses;

/// <summary>The quantities that the elements watch, and which of them have crossed zero.</summary>
internal sealed class Indicators
{
    private readonly Network _network;
    private readonly Element[] _watching;
    private readonly int[] _first;
    private readonly double[] _values;
    private readonly double[] _low;
    private readonly double[] _high;
    private readonly bool[] _isPositive;
    private readonly DeviceState[] _states;

    public Indicators(Network network)
    {
        _network = network;
        _watching = [.. network.Elements.Where(element => element.IndicatorCount > 0)];
        _first = new int[_watching.Length];
        var count = 0;
        for (var index = 0; index < _watching.Length; index++)
        {
            _first[index] = count;
            count += _watching[index].IndicatorCount;
        }

        _values = new double[count];
        _low = new double[count];
        _high = new double[count];
        _isPositive = new bool[count];
        _states = new DeviceState[network.Elements.Length];
    }

    /// <summary>Name of the device that changed last.</summary>
    public string? LastChanged { get; private set; }

    /// <summary>Takes the present states as known, so that only later changes are told.</summary>
    public void Begin()
    {
        Array.Clear(_isPositive);
        foreach (var element in _network.Elements)
            _states[element.Index] = element.State;
        Read();
        _values.CopyTo(_low, 0);
    }

    /// <summary>Reads the indicators at the present point. Returns whether one has crossed since they were last taken over.</summary>
    public bool Read()
    {
        for (var index = 0; index < _watching.Length; index++)
        {
            var element = _watching[index];
            element.Indicate(_values.AsSpan(_first[index], element.IndicatorCount), _network.System, _network.Point);
        }

        for (var index = 0; index < _values.Length; index++)
        {
            if (_values[index] > 0 != _isPositive[index])
                return true;
        }

        return false;
    }

    /// <summary>Takes the indicators read last for the start of the next step.</summary>
    public void TakeAsLow() => _values.CopyTo(_low, 0);

    /// <summary>Takes the indicators read last for the end of the interval that holds an event.</summary>
    public void TakeAsHigh() => _values.CopyTo(_high, 0);

    /// <summary>Where in an interval the first crossing is expected, by straight lines, as a share of it.</summary>
    public double FirstCrossing()
    {
        var earliest = 1.0;
        for (var index = 0; index < _values.Length; index++)
        {
            if (_high[index] > 0 == _isPositive[index])
                continue;
            var share = _low[index] / (_low[index] - _high[index]);
            if (share >= 0)
                earliest = Math.Min(earliest, share);
        }

        return earliest;
    }

    /// <summary>Lets the elements act on what has crossed. Returns whether the equations jump.</summary>
    public bool Act()
    {
        var jumps = false;
        for (var index = 0; index < _watching.Length; index++)
        {
            var element = _watching[index];
            for (var indicator = 0; indicator < element.IndicatorCount; indicator++)
            {
                var place = _first[index] + indicator;
                var isPositive = _values[place] > 0;
                if (isPositive == _isPositive[place])
                    continue;
                jumps |= element.Cross(indicator, isPositive, _network.Point);
                LastChanged = element.Device.Name;

                // A switch starts from the other side again: what it watches now is another quantity.
                _isPositive[place] = !element.IsSwitch(indicator) && isPositive;
            }
        }

        return jumps;
    }

    /// <summary>Tells which devices have changed their state since they were last told. Returns whether any has.</summary>
    public bool Tell(ITransientObserver? observer)
    {
        var hasChanged = false;
        foreach (var element in _network.Elements)
        {
            var state = element.State;
            if (state == _states[element.Index])
                continue;
            observer?.OnEvent(new TransientEvent(_network.Point.Time, element.Index, _states[element.Index], state));
            _states[element.Index] = state;
            hasChanged = true;
        }

        return hasChanged;
    }
}
