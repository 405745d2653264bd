using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Trees;
using Loadmark.Files.Values;

namespace Loadmark.Files.Parsing;

/// <summary>Reads one feed and checks that it refers only to what the rig has.</summary>
/// <param name="index">The rig's gear.</param>
/// <param name="errors">Where faults go.</param>
internal sealed class FeedReader(RigIndex index, ErrorList errors)
{
    private const string OutletForm = "an outlet such as brick/5";
    private const string LoadForm = "a load's tag";
    private const string SettingForm = "a voltage such as 9 V";

    private static readonly ValueKind Joined = ValueKinds.Word(RigWords.Joined);

    /// <summary>The feed; null, with an error, when the node is not a group of keys.</summary>
    public Feed? Read(Node node)
    {
        if (Fields.Of(node, "wired", RigKeys.Feed, errors) is not { } fields)
            return null;

        var from = ReadFrom(fields);
        return new Feed
        {
            From = [.. from],
            Joined = ReadJoint(fields, from.Count),
            At = [.. ReadSettings(fields, from)],
            Lead = ReadLead(fields),
            To = [.. ReadLoads(fields)],
            Pinned = fields.Value("pinned", ValueKinds.Flag) is true,
        };
    }

    private List<OutletRef> ReadFrom(Fields fields)
    {
        var outlets = new List<OutletRef>();
        var seen = new HashSet<OutletRef>();
        foreach (var scalar in fields.Scalars("from", OutletForm))
        {
            if (ReadOutlet(scalar) is not { } outlet)
                continue;
            if (!seen.Add(outlet))
                errors.Add(scalar.Start, $"from: {outlet} stands twice in this feed", scalar.Value);
            outlets.Add(outlet);
        }

        return outlets;
    }

    private OutletRef? ReadOutlet(ScalarNode scalar)
    {
        var text = scalar.Value.Trim();
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        var reference = slash < 0 ? new OutletRef(text, "") : new OutletRef(text[..slash].Trim(), text[(slash + 1)..].Trim());
        if (index.FindSupply(reference.Supply) is not { } supply)
        {
            var nearest = errors.IsFull ? null : index.NearestSupply(reference.Supply);
            var full = nearest is null ? null : slash < 0 ? nearest : $"{nearest}/{reference.Outlet}";
            AddMissing(scalar, "from", $"there is no supply '{ErrorList.Quote(reference.Supply)}'", OutletForm, full);
            return null;
        }

        if (slash < 0)
        {
            if (supply.Outlets.Count == 1)
                return new OutletRef(supply.Id, supply.Outlets[0].Id);
            errors.Add(scalar.Start, $"from: which outlet of {text}? It has {OutletsOf(supply)}", text, OutletForm);
            return null;
        }

        if (index.FindOutlet(reference) is not null)
            return reference;
        var near = errors.IsFull ? null : index.NearestOutlet(reference.ToString());
        near = near is not null && near.StartsWith($"{supply.Id}/", StringComparison.Ordinal) ? near : null;
        AddMissing(
            scalar,
            "from",
            $"{supply.Id} has no outlet '{ErrorList.Quote(reference.Outlet)}'; it has {OutletsOf(supply)}",
            OutletForm,
            near);
        return null;
    }

    private static string OutletsOf(Supply supply)
    {
        const int most = 12;
        if (supply.Outlets.Count == 0)
            return "none that could be read";
        var names = string.Join(", ", supply.Outlets.Take(most).Select(outlet => $"{supply.Id}/{outlet.Id}"));
        return supply.Outlets.Count > most ? $"{names} and {supply.Outlets.Count - most} more" : names;
    }

    private Joint ReadJoint(Fields fields, int outlets)
    {
        var joint = fields.Value("joined", Joined) is Joint said ? said : Joint.None;
        var stated = fields.Find("joined");
        var several = fields.Find("from") is SequenceNode { Items.Count: > 1 };
        if (several && stated is null)
            errors.Add(fields.Start, $"a feed from several outlets needs 'joined: series' or 'joined: parallel'", null, "the key 'joined'");
        else if (!several && stated is not null && outlets == 1)
            errors.Add(
                stated.Start,
                "joined: this feed has one outlet, so there is nothing to join; leave the key out",
                (stated as ScalarNode)?.Value);
        return joint;
    }

    private List<Volts> ReadSettings(Fields fields, List<OutletRef> from)
    {
        var settings = new List<Volts>();
        var scalars = fields.Scalars("at", SettingForm);
        var stated = fields.Find("from") is SequenceNode sequence ? sequence.Items.Count : 1;
        if (scalars.Count > 1 && scalars.Count != stated)
        {
            errors.Add(
                fields.Find("at")!.Start,
                $"at: there are {scalars.Count} voltages for {stated} outlet{(stated == 1 ? "" : "s")}; write one for all or one for each",
                $"{scalars.Count} voltages",
                $"1 or {stated} voltages");
            return settings;
        }

        for (var i = 0; i < scalars.Count; i++)
        {
            var setting = QuantityParser.Read(Unit.Volt, scalars[i], "at", SettingForm, mayBeZero: false, keySaysUnit: false, errors);
            if (setting is not Volts volts)
                continue;
            settings.Add(volts);
            for (var j = scalars.Count == 1 ? 0 : i; j < (scalars.Count == 1 ? from.Count : Math.Min(i + 1, from.Count)); j++)
                CheckSetting(scalars[i], volts, from[j]);
        }

        return settings;
    }

    private void CheckSetting(ScalarNode scalar, Volts volts, OutletRef reference)
    {
        var rating = OutletRating.Of(index.FindSupply(reference.Supply)!, index.FindOutlet(reference)!);
        if (rating.CanBeSetTo(volts))
            return;

        var choice = string.Join(", ", rating.Modes.Select(mode => mode.Volts!.Value.ToString()));
        errors.Add(scalar.Start, $"at: {reference} has no {volts} setting: {choice}", scalar.Value, choice);
    }

    private string? ReadLead(Fields fields)
    {
        if (fields.Scalar("lead", "a lead's name") is not { } scalar)
            return null;
        var id = scalar.Value;
        if (index.HasLead(id))
            return id;
        switch (RigWords.LeadType.Find(id))
        {
            case LeadType.Straight:
                return null;
            case { } type:
                errors.Add(
                    scalar.Start,
                    $"lead: 'leads' lists no '{ErrorList.Quote(id)}'; only plain straight leads need no listing, "
                    + $"so list it with 'type: {RigWords.LeadType.WordOf(type)}'",
                    id,
                    "the name of a lead under 'leads'");
                return null;
            default:
                AddMissing(
                    scalar,
                    "lead",
                    $"'leads' lists no '{ErrorList.Quote(id)}'",
                    "the name of a lead under 'leads'",
                    errors.IsFull ? null : index.NearestLead(id));
                return null;
        }
    }

    private List<string> ReadLoads(Fields fields)
    {
        var loads = new List<string>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var scalar in fields.Scalars("to", LoadForm))
        {
            if (!index.HasLoad(scalar.Value))
                AddMissing(
                    scalar,
                    "to",
                    $"there is no load '{ErrorList.Quote(scalar.Value)}'",
                    LoadForm,
                    errors.IsFull ? null : index.NearestLoad(scalar.Value));
            else if (!seen.Add(scalar.Value))
                errors.Add(scalar.Start, $"to: {scalar.Value} stands twice in this feed", scalar.Value);
            else
                loads.Add(scalar.Value);
        }

        return loads;
    }

    private void AddMissing(ScalarNode scalar, string key, string message, string expected, string? nearest)
    {
        var hint = nearest is null ? "" : $"; did you mean '{nearest}'?";
        errors.Add(scalar.Start, $"{key}: {message}{hint}", scalar.Value, expected, nearest);
    }
}
