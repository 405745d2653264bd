using Loadmark.Drawing.Texts;
using Loadmark.Files.Forms;
using Loadmark.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>
/// What can be typed about one thing, and what holds where nothing is typed. Each field is kept when it is left; what cannot be read stays
/// in the field with the reason.
/// </summary>
public sealed partial class FieldForm : ComponentBase
{
    private static readonly string[] YesNo = ["yes", "no"];
    private readonly Dictionary<string, string> _typed = new(StringComparer.Ordinal);
    private IReadOnlyDictionary<string, string> _faults = new Dictionary<string, string>();
    private IReadOnlyDictionary<string, string>? _seen;

    /// <summary>What ids on the page begin with; unique on it.</summary>
    [Parameter, EditorRequired] public string Prefix { get; set; } = "";

    /// <summary>The fields to show, in order.</summary>
    [Parameter, EditorRequired] public IReadOnlyList<FormField> Fields { get; set; } = [];

    /// <summary>What is kept, by key.</summary>
    [Parameter, EditorRequired] public IReadOnlyDictionary<string, string> Values { get; set; } = new Dictionary<string, string>();

    /// <summary>What holds for fields in which nothing is typed, by key; a field that is not among them has nothing in force.</summary>
    [Parameter] public IReadOnlyDictionary<string, FieldInForce> InForce { get; set; } = new Dictionary<string, FieldInForce>();

    /// <summary>Keeps what is typed, all fields by key; answers what is wrong, by key. Nothing is kept when anything is.</summary>
    [Parameter, EditorRequired]
    public Func<IReadOnlyDictionary<string, string>, Task<IReadOnlyDictionary<string, string>>> Keep { get; set; } = null!;

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        // What was typed and refused stays in its field until what is kept changes under it.
        if (_seen is not null && Same(_seen, Values))
            return;
        if (_seen is not null)
        {
            _typed.Clear();
            _faults = new Dictionary<string, string>();
        }

        _seen = Values;
    }

    private static bool Same(IReadOnlyDictionary<string, string> one, IReadOnlyDictionary<string, string> other) =>
        one.Count == other.Count && one.All(entry => other.GetValueOrDefault(entry.Key) == entry.Value);

    private static string Word(FormField field, string typed) => field.IsYesNo
        ? typed switch { "true" or "yes" => "yes", "false" or "no" => "no", _ => "" }
        : typed;

    /// <summary>"9 V, on the label", "centre negative, assumed"; null where nothing is in force.</summary>
    private string? SaysInForce(FormField field)
    {
        if (!InForce.TryGetValue(field.Key, out var found))
            return null;
        var text = field.IsYesNo || field.Words.Count > 0 ? T[Word(field, found.Text)].Value : found.Text;
        text = SafeText.Clean(text);
        return found.Origin == Core.Gear.Origin.Stated ? T["{0}, on the label", text] : $"{text}, {FigureWords.Of(found.Origin, T)}";
    }

    private async Task ChangeAsync(string key, ChangeEventArgs change)
    {
        _typed[key] = change.Value as string ?? "";
        var all = new Dictionary<string, string>(Values, StringComparer.Ordinal);
        foreach (var (name, typed) in _typed)
            all[name] = typed;
        _faults = await Keep(all);
        if (_faults.Count == 0)
            _typed.Clear();
    }
}
