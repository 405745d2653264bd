namespace Loadmark.Circuits.Networks;

/// <summary>The changeable figures of a network, by device and kind.</summary>
internal sealed class ParameterTable
{
    private const int MostParameters = 64;

    private readonly Dictionary<int, int> _slots = [];
    private readonly List<bool> _mayBeZero = [];
    private double[] _values = new double[16];
    private int _count;

    /// <summary>The values by slot; the elements read them at every analysis.</summary>
    public double[] Values { get; private set; } = [];

    public int Add(int device, DeviceParameter parameter, double value, bool mayBeZero)
    {
        _slots.Add(Key(device, parameter), _count);
        if (_count == _values.Length)
            Array.Resize(ref _values, 2 * _count);
        _values[_count++] = value;
        _mayBeZero.Add(mayBeZero);
        return _count - 1;
    }

    public void Seal() => Values = _values[.._count];

    public int? Find(int device, DeviceParameter parameter) => _slots.TryGetValue(Key(device, parameter), out var slot) ? slot : null;

    public void Set(int slot, double value)
    {
        if (!(value >= 0) || (value == 0 && !_mayBeZero[slot]) || double.IsNaN(value))
            throw new ArgumentOutOfRangeException(nameof(value), value, _mayBeZero[slot] ? "Must be 0 or more." : "Must be over 0.");
        Values[slot] = value;
    }

    private static int Key(int device, DeviceParameter parameter) => (device * MostParameters) + (int)parameter;
}
