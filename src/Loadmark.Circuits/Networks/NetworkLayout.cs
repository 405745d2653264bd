using Loadmark.Circuits.Devices;
using Loadmark.Circuits.LinearAlgebra;

namespace Loadmark.Circuits.Networks;

/// <summary>Gives out unknowns, states and parameters to the elements, then the slots that follow from the order of elimination.</summary>
internal sealed class NetworkLayout(Dictionary<string, int> nodes, SparsePattern? known)
{
    private const int GroundNode = -1;

    private readonly List<(int Row, int Column)> _entries = [];
    private readonly Dictionary<int, int[]> _after = [];
    private SparsePattern? _pattern = known;

    public ParameterTable Parameters { get; } = new();

    public int UnknownCount { get; private set; } = nodes.Count;

    public int StateCount { get; private set; }

    public SparsePattern Pattern => _pattern ?? throw new InvalidOperationException("The order is not known yet.");

    public int Plus(Element element) => Node(element.Device.Plus);

    public int Minus(Element element) => Node(element.Device.Minus);

    public int Node(string name) => name == Netlist.Ground ? GroundNode : nodes[name];

    /// <summary>The devices that the unknowns beside the nodes belong to, in their order.</summary>
    public List<string> Owners { get; } = [];

    /// <summary>An unknown beside the nodes; it is eliminated after one of the given nodes, if there are any.</summary>
    public int AddUnknown(Element owner, params int[] after)
    {
        Owners.Add(owner.Device.Name);
        _after[UnknownCount] = [.. after.Where(node => node != GroundNode)];
        return UnknownCount++;
    }

    public int AddState() => StateCount++;

    public int AddParameter(Element element, DeviceParameter parameter, double value, bool mayBeZero = false) =>
        Parameters.Add(element.Index, parameter, value, mayBeZero);

    public void Meet(int one, int other)
    {
        if (one != GroundNode && other != GroundNode)
            _entries.Add((one, other));
    }

    /// <summary>Orders the unknowns, unless the order of an equal network was given.</summary>
    public void Order()
    {
        _pattern ??= SparsePattern.Create(
            UnknownCount, _entries, [.. Enumerable.Range(0, UnknownCount).Select(unknown => _after.GetValueOrDefault(unknown, []))]);
        Parameters.Seal();
    }

    public int Place(int unknown) => unknown == GroundNode ? Pattern.Size : Pattern.Position[unknown];

    /// <summary>Index of a value; what belongs to ground goes to a place behind the last value, which nobody reads.</summary>
    public int Value(int row, int column) =>
        row == GroundNode || column == GroundNode ? Pattern.ValueCount : Pattern.IndexOf(row, column);

    public PairSlots Pair(int plus, int minus) =>
        new(Place(plus), Place(minus), Value(plus, plus), Value(plus, minus), Value(minus, plus), Value(minus, minus));
}
