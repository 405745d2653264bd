using System.Collections.Immutable;
using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Devices;
using Loadmark.Circuits.LinearAlgebra;

namespace Loadmark.Circuits.Networks;

/// <summary>
/// A netlist made ready: order of elimination found, every slot bound. Its figures may be changed and it may be solved again
/// and again without allocating. One thread at a time; for more threads, <see cref="Copy"/>.
/// </summary>
public sealed class Network
{
    private readonly Netlist _netlist;
    private readonly Dictionary<string, int> _nodes;
    private readonly Dictionary<string, int> _devices;
    private readonly ParameterTable _parameters;
    private readonly SparsePattern _pattern;
    private readonly int[] _places;
    private readonly string[] _rowNames;

    private Network(Netlist netlist, SparsePattern? pattern)
    {
        _netlist = netlist;
        Nodes =
            [.. netlist.Devices.SelectMany(device => new[] { device.Plus, device.Minus }).Where(node => node != Netlist.Ground).Distinct()];
        _nodes = [];
        for (var node = 0; node < Nodes.Length; node++)
            _nodes.Add(Nodes[node], node);
        _devices = [];
        for (var device = 0; device < netlist.Devices.Length; device++)
            _devices.Add(netlist.Devices[device].Name, device);
        Elements = [.. netlist.Devices.Select(ElementFactory.Create)];

        var layout = new NetworkLayout(_nodes, pattern);
        foreach (var element in Elements)
            element.Declare(layout);
        layout.Order();
        foreach (var element in Elements)
            element.Bind(layout);

        _parameters = layout.Parameters;
        _pattern = layout.Pattern;
        _places = new int[Nodes.Length];
        var isNode = new bool[layout.UnknownCount];
        for (var node = 0; node < _places.Length; node++)
        {
            _places[node] = layout.Place(node);
            isNode[_places[node]] = true;
        }

        _rowNames = new string[layout.UnknownCount];
        for (var unknown = 0; unknown < _rowNames.Length; unknown++)
            _rowNames[layout.Place(unknown)] = unknown < Nodes.Length ? Nodes[unknown] : layout.Owners[unknown - Nodes.Length];
        System = new EquationSystem(_pattern, Elements, isNode);
        Point = new AnalysisPoint(layout.StateCount);
    }

    /// <summary>The nodes by number, without ground.</summary>
    public ImmutableArray<string> Nodes { get; }

    /// <summary>The devices by number.</summary>
    public ImmutableArray<Device> Devices => _netlist.Devices;

    /// <summary>The number of its equations: a node each, and a branch where a device needs one.</summary>
    public int Size => System.Size;

    /// <summary>
    /// What was computed in this network since it was made: the number of its equations, each time that they were evaluated. It measures
    /// time without a clock, the same on every machine.
    /// </summary>
    public long Work => System.Work;

    internal Element[] Elements { get; }

    internal EquationSystem System { get; }

    internal AnalysisPoint Point { get; }

    internal SparsePattern Pattern => _pattern;

    /// <summary>A figure of a device; it holds from the next analysis on.</summary>
    /// <param name="slot">Its place, from <see cref="Slot"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not a number, or 0 where that cannot be.</exception>
    public double this[ParameterSlot slot]
    {
        get => _parameters.Values[slot.Index];
        set => _parameters.Set(slot.Index, value);
    }

    /// <summary>Makes a netlist ready, or says what forbids it.</summary>
    /// <param name="netlist">The description.</param>
    public static Compilation Compile(Netlist netlist)
    {
        ArgumentNullException.ThrowIfNull(netlist);
        var faults = StructureCheck.Check(netlist);
        return faults.IsEmpty ? new Compilation(new Network(netlist, null), []) : new Compilation(null, faults);
    }

    /// <summary>Another network of the same structure and figures for another thread. The order of elimination is shared.</summary>
    public Network Copy()
    {
        var copy = new Network(_netlist, _pattern);
        _parameters.Values.CopyTo(copy._parameters.Values, 0);
        return copy;
    }

    /// <summary>The number of a node.</summary>
    /// <param name="name">Its name; not ground.</param>
    /// <exception cref="KeyNotFoundException">There is no such node.</exception>
    public int Node(string name) => _nodes[name];

    /// <summary>The number of a device.</summary>
    /// <param name="name">Its name.</param>
    /// <exception cref="KeyNotFoundException">There is no such device.</exception>
    public int Device(string name) => _devices[name];

    /// <summary>The place of a figure of a device.</summary>
    /// <param name="device">Name of the device.</param>
    /// <param name="parameter">Which of its figures.</param>
    /// <exception cref="KeyNotFoundException">There is no such device, or it has no such figure.</exception>
    public ParameterSlot Slot(string device, DeviceParameter parameter) =>
        _parameters.Find(Device(device), parameter) is { } slot
            ? new ParameterSlot(slot)
            : throw new KeyNotFoundException($"{device} has no {parameter} to change.");

    /// <summary>Voltage of a node at the point solved last, V against ground.</summary>
    /// <param name="node">Its number.</param>
    public double Voltage(int node) => System.Unknowns[_places[node]];

    /// <summary>Voltage of a node at the point solved last, V against ground.</summary>
    /// <param name="node">Its name; ground is 0 V.</param>
    /// <exception cref="KeyNotFoundException">There is no such node.</exception>
    public double Voltage(string node) => node == Netlist.Ground ? 0 : Voltage(_nodes[node]);

    /// <summary>Voltage from plus to minus of a device at the point solved last, V.</summary>
    /// <param name="device">Its number.</param>
    public double VoltageAcross(int device) => System.VoltageOf(Elements[device].Pair);

    /// <summary>
    /// Current of a device at the point solved last, A: through it from plus to minus; for an outlet and a voltage source what
    /// it gives out of plus.
    /// </summary>
    /// <param name="device">Its number.</param>
    public double Current(int device) => Elements[device].Current(System, Point);

    /// <summary>What a device is doing at the point solved last.</summary>
    /// <param name="device">Its number.</param>
    public DeviceState State(int device) => Elements[device].State;

    internal int Place(int node) => _places[node];

    /// <summary>The node, or the device with an unknown of its own, that a row of the equations belongs to.</summary>
    internal string RowName(int place) => _rowNames[place];
}
