using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Entry;
using Loadmark.Files.Forms;

namespace Loadmark.Workshop.Asking;

/// <summary>The rig that a question speaks of: its loads and supplies by what they say, nothing plugged in yet.</summary>
/// <param name="Rig">The rig.</param>
/// <param name="IsChain">Whether all loads would hang on one lead with several plugs.</param>
public sealed record AskedRig(Rig Rig, bool IsChain)
{
    /// <summary>The most things of a sort that are looked at.</summary>
    public const int Most = 100;

    private static readonly string[] Circuits = ["analog", "analogue", "digital"];

    private const string Pedal = "pedal";
    private const string Adaptor = "adaptor";

    /// <summary>Reads what the things say.</summary>
    /// <param name="question">The question.</param>
    /// <param name="complaint">What cannot be read, as a sentence; empty where all can.</param>
    /// <returns>The rig; null where something cannot be read.</returns>
    public static AskedRig? Of(PlugInQuestion question, out string complaint)
    {
        ArgumentNullException.ThrowIfNull(question);
        complaint = question.Loads.Count == 0 ? "Nothing is said of what is to be plugged in, such as \"9V DC 300mA centre negative\"."
            : question.Loads.Count > Most || question.Supplies.Count > Most
                ? $"At most {Most} things are looked at; write a rig file for more."
            : "";
        if (complaint.Length > 0)
            return null;

        var names = new HashSet<string>(StringComparer.Ordinal);
        var loads = new List<Load>();
        foreach (var text in question.Loads)
        {
            if (Read(text, EntryKind.Loads, out var name, out complaint)?.Load is not { } load)
                return null;
            loads.Add(load with { Id = Free(name ?? Pedal, names), Kind = KindIn(name) });
        }

        var supplies = new List<Supply>();
        foreach (var text in question.Supplies)
        {
            if (Read(text, EntryKind.Supplies, out var name, out complaint)?.Supply is not { } supply)
                return null;
            supplies.Add(supply with { Id = Free(name ?? Adaptor, names) });
        }

        var mains = question.Mains is { Length: > 0 } typed ? GearForm.ReadRig(new Dictionary<string, string> { ["mains"] = typed }) : null;
        if (mains is { Value: null, Faults: var faults })
        {
            complaint = $"The mains: {faults.Values.First()}";
            return null;
        }

        return new AskedRig(new Rig
        {
            Name = NameOf(loads, supplies),
            Mains = mains?.Value?.Mains,
            Loads = [.. loads],
            Supplies = [.. supplies],
        }, question.IsChain);
    }

    /// <summary>The name that the rig is kept by.</summary>
    private static string NameOf(List<Load> loads, List<Supply> supplies)
    {
        const int named = 3;
        var what = string.Join(", ", loads.Take(named).Select(static load => load.Id))
            + (loads.Count > named ? $" and {loads.Count - named} more" : "");
        return supplies.Count == 0 ? what : $"{what} on {supplies[0].Id}{(supplies.Count > 1 ? $" and {supplies.Count - 1} more" : "")}";
    }

    /// <summary>The kind that a name tells: "analogue drive", "digital delay"; null where it does not say which of the two.</summary>
    private static LoadKind? KindIn(string? name) =>
        name is not null && name.Split(' ').Any(static word => Circuits.Contains(word, StringComparer.OrdinalIgnoreCase))
            ? new LoadKind(name)
            : null;

    /// <summary>What a text says, as the lines of labels are read everywhere; null where it cannot be used.</summary>
    private static EntryRow? Read(string text, EntryKind kind, out string? name, out string complaint)
    {
        var named = NamedLabel.Of(text);
        name = named.Name?.Replace('/', '-');
        if (Silent(text, named, kind) is { } silent)
        {
            complaint = "";
            return silent;
        }

        var line = $"thing: {(named.Label.Length == 0 ? text.Trim() : named.Label)}";
        var row = LabelLines.Read(line, new EntryTarget(kind, [])).Rows.FirstOrDefault();
        complaint = row is { Refusal: null }
            ? ""
            : $"'{Shortened(text)}' cannot be used: {row?.Refusal?.Because ?? "there is nothing in it"}.";
        return row is { Refusal: null } ? row : null;
    }

    /// <summary>
    /// A thing of which nothing but words are known, such as a name: its figures are asked for. Null where it has figures.
    /// </summary>
    private static EntryRow? Silent(string text, NamedLabel named, EntryKind kind)
    {
        if (!text.Any(char.IsLetter) || text.Any(char.IsDigit))
            return null;
        var label = NameplateReader.Read(named.Label);
        return kind == EntryKind.Loads
            ? new EntryRow { Line = 1, Text = text, Load = new Load { Id = Pedal, Label = label } }
            : new EntryRow
            {
                Line = 1,
                Text = text,
                Supply = new Supply { Id = Adaptor, Label = label, Outlets = [new Outlet { Id = "1", Label = NameplateReader.Read("") }] },
            };
    }

    private static string Shortened(string text) => text.Length <= 60 ? text : $"{text.AsSpan(0, 60)}…";

    private static string Free(string name, HashSet<string> names)
    {
        var free = name;
        for (var number = 2; !names.Add(free); number++)
            free = $"{name} {number}";
        return free;
    }
}
