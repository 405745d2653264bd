using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Parsing;

/// <summary>Makes a rig of a tree.</summary>
internal static class RigTreeReader
{
    /// <summary>The rig; meaningless when there are errors afterwards, null when the root is no group of keys.</summary>
    /// <param name="root">The tree.</param>
    /// <param name="errors">Where faults go.</param>
    /// <param name="library">The gear library; null where there is none.</param>
    public static Rig? Read(Node root, ErrorList errors, IGearLookup? library)
    {
        if (root.IsNull)
        {
            errors.Add(Spot.Start, "the file is empty; expected a rig, which begins with 'rig: ' and its name", "nothing", "a rig");
            return null;
        }

        if (root is not MappingNode)
        {
            errors.Add(
                root.Start, $"expected the keys of a rig, such as 'rig:' and 'loads:', found {root.Form}", root.Form, "the keys of a rig");
            return null;
        }

        if (Fields.Of(root, "the file", RigKeys.Rig, errors) is not { } fields)
            return null;
        var rig = fields.Over(new Rig { Name = (string?)fields.Value("rig", ValueKinds.Text) ?? "" }, RigKeys.Rig);
        var loads = ReadNamed(
            fields, "loads", "tags of loads with their keys", (id, value, list) => LoadReader.Read(id, value, list, library));
        var allowance = new OutletAllowance();
        var supplies = ReadNamed(
            fields,
            "supplies",
            "ids of supplies with their keys",
            (id, value, list) => SupplyReader.Read(id, value, allowance, list, library));
        var leads = ReadNamed(fields, "leads", "names of leads with their keys", LeadReader.Read);
        var wired = ReadWired(fields, new RigIndex(loads, supplies, leads));
        return rig with
        {
            Loads = [.. loads],
            Supplies = [.. supplies],
            Leads = [.. leads],
            Wired = wired is null ? null : (ValueList<Feed>)[.. wired],
            Signal = [.. ReadSignal(fields)],
        };
    }

    private static List<T> ReadNamed<T>(Fields fields, string key, string expected, Func<ScalarNode, Node, ErrorList, T?> read)
        where T : class
    {
        var things = new List<T>();
        switch (fields.Find(key))
        {
            case null:
                break;
            case MappingNode mapping:
                foreach (var (id, value) in mapping.Entries)
                {
                    // "straight:" with nothing after it is a thing that says nothing of itself, which is allowed.
                    var content = value.IsNull ? new MappingNode(id.Start, isFlow: true) : value;
                    if (read(id, content, fields.Errors) is { } thing)
                        things.Add(thing);
                }

                break;
            case var other:
                fields.Errors.ExpectedForm(other.Start, other.Form, key, expected);
                break;
        }

        return things;
    }

    private static List<Feed>? ReadWired(Fields fields, RigIndex index)
    {
        var reader = new FeedReader(index, fields.Errors);
        switch (fields.Find("wired"))
        {
            case null:
                return null;
            case SequenceNode sequence:
                var feeds = new List<Feed>(sequence.Items.Count);
                foreach (var item in sequence.Items)
                {
                    if (reader.Read(item) is { } feed)
                        feeds.Add(feed);
                }

                return feeds;
            case var other:
                fields.Errors.ExpectedForm(other.Start, other.Form, "wired", "a list of feeds, such as - { from: brick/1, to: drive-3 }");
                return null;
        }
    }

    private static List<string> ReadSignal(Fields fields)
    {
        var words = new List<string>();
        if (fields.Find("signal") is not { } node)
            return words;
        if (node is not SequenceNode sequence)
        {
            fields.Errors.ExpectedForm(node.Start, node.Form, "signal", "a list of tags, such as [drive-3, delay-2, amp]");
            return words;
        }

        foreach (var item in sequence.Items)
        {
            if (item is not ScalarNode scalar)
                fields.Errors.ExpectedForm(item.Start, item.Form, "signal", "a tag or a word");
            else if (string.IsNullOrWhiteSpace(scalar.Value))
                fields.Errors.Expected(scalar.Start, "signal", "a tag or a word", scalar.Value, "it is empty");
            else
                words.Add(scalar.Value.Trim());
        }

        return words;
    }
}
