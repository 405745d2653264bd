using System.Collections.Immutable;

namespace Loadmark.Simulation.Figures;

/// <summary>Gathers what is assumed while a circuit is built, each figure once with all that it was used for.</summary>
internal sealed class AssumptionList
{
    private readonly List<(string Figure, string Value, string Source, bool IsForStartUp, List<string> Subjects)> _entries = [];
    private readonly Dictionary<(string, string), int> _places = [];

    /// <summary>Takes a common figure for something, and says so.</summary>
    public T Take<T>(CommonFigure<T> figure, string subject)
    {
        Add(figure.Name, figure.Text, subject, figure.Source, figure.IsForStartUp);
        return figure.Value;
    }

    /// <summary>Says what was taken for something.</summary>
    public void Add(string figure, string value, string subject, string source, bool isForStartUp = false)
    {
        if (!_places.TryGetValue((figure, value), out var place))
        {
            _places.Add((figure, value), place = _entries.Count);
            _entries.Add((figure, value, source, isForStartUp, []));
        }

        if (!_entries[place].Subjects.Contains(subject))
            _entries[place].Subjects.Add(subject);
    }

    /// <summary>What was said, in the order in which it was said first.</summary>
    public ImmutableArray<Assumption> ToArray() =>
        [.. _entries.Select(static entry => new Assumption(entry.Figure, entry.Value, [.. entry.Subjects], entry.Source, entry.IsForStartUp))];
}
