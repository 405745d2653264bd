using Microsoft.AspNetCore.Components;

namespace Loadmark.Web.Parts;

/// <summary>A text field with its name and what there is to say of it.</summary>
public sealed partial class Field : ComponentBase
{
    /// <summary>The field's id on the page.</summary>
    [Parameter, EditorRequired] public string Id { get; set; } = "";

    /// <summary>What stands above it.</summary>
    [Parameter, EditorRequired] public string Name { get; set; } = "";

    /// <summary>What is in it; null for nothing.</summary>
    [Parameter] public string? Value { get; set; }

    /// <summary>What there is to say of it; null for nothing.</summary>
    [Parameter] public string? About { get; set; }

    /// <summary>What is wrong with what was typed; null for nothing.</summary>
    [Parameter] public string? Problem { get; set; }

    /// <summary>Told what was typed, on one line; null for nothing.</summary>
    [Parameter] public EventCallback<string?> OnSet { get; set; }

    private string? Says => Problem ?? About;

    private static string? TextOf(ChangeEventArgs change)
    {
        var text = string.Concat((change.Value?.ToString() ?? "").Where(static one => !char.IsControl(one))).Trim();
        return text.Length == 0 ? null : text;
    }
}
