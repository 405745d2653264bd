using System.Globalization;
using Loadmark.Simulation.Spreading;
using Loadmark.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>What becomes of the answer when figures are not known exactly, with each spread as a bar.</summary>
public sealed partial class SpreadTable : ComponentBase
{
    private decimal _least;
    private decimal _most = 1;

    /// <summary>What was sampled.</summary>
    [Parameter, EditorRequired] public SpreadResult Result { get; set; } = null!;

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        var ends = Result.Loads.Items.SelectMany(static load => new[] { load.Volts.Low?.Value, load.Volts.High?.Value }).OfType<decimal>()
            .ToList();
        if (ends.Count == 0)
            return;
        _least = Math.Floor(ends.Min());
        _most = Math.Max(_least + 1, Math.Ceiling(ends.Max()));
    }

    private string Place(Quantity<Volt> volts) => Number(100 * (volts.Value - _least) / (_most - _least));

    private string Span(Quantity<Volt> low, Quantity<Volt> high) =>
        Number(Math.Max(0.8m, 100 * (high.Value - low.Value) / (_most - _least)));

    private static string Number(decimal value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
