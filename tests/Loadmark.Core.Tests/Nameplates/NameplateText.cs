using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Tests.Nameplates;

/// <summary>A reading on one line, all its fields, so that tables of labels stay readable.</summary>
internal static class NameplateText
{
    public static string Of(Nameplate nameplate, bool withUnread = true)
    {
        List<string> parts = [Form(nameplate.Form), $"[{string.Join("; ", nameplate.Modes.Select(Mode))}]"];
        parts.AddRange(nameplate.Outlets.Select(Of));
        if (nameplate.EachOutlet)
            parts.Add("each");
        if (nameplate.Total is { } total)
            parts.Add($"total({total})");
        AddField(parts, "polarity", nameplate.Polarity, value => value == Polarity.CentreNegative ? "centre-negative" : "centre-positive");
        AddField(parts, "plug", nameplate.Plug, value => value.Name);
        AddField(parts, "regulated", nameplate.Regulated, value => value ? "yes" : "no");
        if (nameplate.Mains is { } mains)
            parts.Add($"mains({Join(mains.Volts?.ToString(), mains.Hertz?.ToString(), mains.Amps?.ToString(), mains.Watts?.ToString(), mains.VoltAmps?.ToString())})");
        if (nameplate.Input is { } input)
            parts.Add($"input({Join(input.Volts?.ToString(), input.Amps?.ToString(), input.Watts?.ToString(), input.VoltAmps?.ToString(), input.Form.State == FieldState.Absent ? null : Form(input.Form))})");
        AddField(parts, "ground", nameplate.Ground, value => value == GroundSide.Positive ? "positive" : "negative");
        AddField(parts, "isolated", nameplate.Isolated, value => value ? "yes" : "no");
        AddField(parts, "volts", nameplate.AmbiguousVolts, value => value.ToString());
        AddField(parts, "amps", nameplate.AmbiguousAmps, value => value.ToString());
        AddField(parts, "watts", nameplate.AmbiguousWatts, value => value.ToString());
        if (!nameplate.Derived.IsEmpty)
            parts.Add($"derived {string.Join(',', nameplate.Derived)}");
        parts.AddRange(nameplate.Conflicts.Select(conflict => $"conflict({conflict})"));
        if (nameplate.NotUnderstood != LabelTopics.None)
            parts.Add($"ask {nameplate.NotUnderstood}");
        if (withUnread)
            parts.AddRange(nameplate.Unread.Select(piece => $"«{piece.Text.ReplaceLineEndings("\\n")}»"));
        return string.Join(' ', parts);
    }

    private static string Form(Field<SupplyForm> form) => form.State switch
    {
        FieldState.Absent => "-",
        FieldState.Ambiguous => "dc|ac",
        _ => form.Value == SupplyForm.Direct ? "dc" : "ac",
    };

    /// <summary>A group of outlets.</summary>
    public static string Of(PrintedOutlets group)
    {
        List<string> own = [];
        AddField(own, "form", group.Form, value => value == SupplyForm.Direct ? "dc" : "ac");
        AddField(own, "polarity", group.Polarity, value => value == Polarity.CentreNegative ? "centre-negative" : "centre-positive");
        AddField(own, "isolated", group.Isolated, value => value ? "yes" : "no");
        return $"outlets {Join(group.Ids, $"x{group.Count}")} [{string.Join("; ", group.Modes.Select(Mode))}]{string.Concat(own.Select(part => " " + part))}";
    }

    private static string Mode(Mode mode) => Join(
        mode.Volts?.ToString(),
        mode.AmpsFrom is { } from ? $"{from} to {mode.Amps}" : mode.Amps?.ToString(),
        mode.Watts?.ToString(),
        mode.VoltAmps?.ToString(),
        mode.Hertz?.ToString());

    private static string Join(params IEnumerable<string?> parts) => string.Join(' ', parts.Where(part => part is not null));

    private static void AddField<T>(List<string> parts, string name, Field<T> field, Func<T, string> write)
        where T : struct
    {
        if (field.State != FieldState.Absent)
        {
            parts.Add(name + " " + field.State switch
            {
                FieldState.Read => write(field.Value!.Value),
                FieldState.Ambiguous => string.Join('|', field.Candidates.Select(write)) + (field.Candidates.Length == 1 ? "?" : ""),
                _ => "unreadable",
            });
        }
    }
}
