using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using Assembly = System.Reflection.Assembly;

namespace Loadmark.Tests.House;

/// <summary>
/// The namespaces of one project, which are its folders, and which of them needs which: from what its compiled types refer to, and from the
/// <c>using</c> lines of its files, because a constant leaves no trace in what is compiled.
/// </summary>
internal sealed class NamespaceGraph
{
    private const int MostReasons = 12;

    private readonly SortedDictionary<string, SortedDictionary<string, SortedSet<string>>> _needs = new(StringComparer.Ordinal);

    private NamespaceGraph(string project) => Project = project;

    /// <summary>The project's name, which its namespaces begin with.</summary>
    public string Project { get; }

    /// <summary>How many namespaces hold types.</summary>
    public int Count => _needs.Count;

    /// <summary>The namespaces of a project.</summary>
    /// <param name="assembly">The project, compiled.</param>
    /// <param name="files">Its source files; those of other projects are passed over.</param>
    public static NamespaceGraph Of(Assembly assembly, IEnumerable<SourceFile> files)
    {
        var name = assembly.GetName().Name!;
        var graph = new NamespaceGraph(name == "loadmark" ? "Loadmark" : name);
        var types = new ArchLoader().LoadAssemblies(assembly).Build().Types;
        foreach (var type in types.Where(type => graph.Holds(type.Namespace.FullName)))
        {
            foreach (var dependency in type.Dependencies.Where(dependency => IsOf(dependency.Target, assembly)))
                graph.Add(type.Namespace.FullName, dependency.Target.Namespace.FullName, $"{type.Name} -> {dependency.Target.Name}");
        }

        foreach (var file in files.Where(file => file.Project == graph.Project && file.Namespace is not null))
        {
            foreach (var used in file.Usings)
                graph.Add(file.Namespace!, used, $"{file.Name} uses {used}");
        }

        graph.DropUnknown();
        return graph;
    }

    /// <summary>
    /// The sets of namespaces each of which needs, in the end, each other of its set; the largest first. None where the graph has no cycle.
    /// </summary>
    public IReadOnlyList<IReadOnlyList<string>> Cycles()
    {
        var reached = _needs.Keys.ToDictionary(name => name, Reach, StringComparer.Ordinal);
        return [.. _needs.Keys.Where(name => reached[name].Contains(name))
            .GroupBy(name => string.Join(", ", SetOf(name)), StringComparer.Ordinal)
            .Select(IReadOnlyList<string> (set) => [.. set]).OrderByDescending(set => set.Count)];

        IEnumerable<string> SetOf(string name) =>
            reached[name].Where(other => reached[other].Contains(name)).Order(StringComparer.Ordinal);
    }

    /// <summary>What needs what inside a set of namespaces, an arrow with its first reasons a line.</summary>
    /// <param name="set">The set, as <see cref="Cycles"/> has it.</param>
    public IEnumerable<string> Arrows(IReadOnlyList<string> set) =>
        from name in set
        from need in _needs[name]
        where set.Contains(need.Key, StringComparer.Ordinal)
        select $"{name} -> {need.Key}: {Tell(need.Value)}";

    private static string Tell(SortedSet<string> reasons) =>
        string.Join("; ", reasons.Take(MostReasons)) + (reasons.Count > MostReasons ? $"; {reasons.Count - MostReasons} more" : "");

    private HashSet<string> Reach(string name)
    {
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var open = new Queue<string>(_needs[name].Keys);
        while (open.TryDequeue(out var next))
        {
            if (reached.Add(next))
            {
                foreach (var need in _needs[next].Keys)
                    open.Enqueue(need);
            }
        }

        return reached;
    }

    private void Add(string from, string to, string because)
    {
        if (!Holds(from))
            return;
        if (!_needs.TryGetValue(from, out var needs))
            _needs.Add(from, needs = new(StringComparer.Ordinal));
        if (to == from || !Holds(to))
            return;
        if (!needs.TryGetValue(to, out var reasons))
            needs.Add(to, reasons = new(StringComparer.Ordinal));
        reasons.Add(because);
    }

    private void DropUnknown()
    {
        foreach (var needs in _needs.Values)
        {
            foreach (var unknown in needs.Keys.Where(name => !_needs.ContainsKey(name)).ToList())
                needs.Remove(unknown);
        }
    }

    private bool Holds(string name) => name == Project || name.StartsWith(Project + ".", StringComparison.Ordinal);

    /// <summary>Whether a type is of the assembly; a generic parameter, which stands for any type, is of none.</summary>
    private static bool IsOf(IType type, Assembly assembly) =>
        type is not GenericParameter && type.Assembly?.Name.Split(',')[0] == assembly.GetName().Name;
}
