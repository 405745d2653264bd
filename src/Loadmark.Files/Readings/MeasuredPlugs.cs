using System.Collections.Immutable;
using Loadmark.Core.Acceptance;
using Loadmark.Core.LeadLists;
using Loadmark.Core.Readings;
using Loadmark.Files.Errors;

namespace Loadmark.Files.Readings;

/// <summary>Collects what was measured at each plug; what is measured twice is a fault.</summary>
internal sealed class MeasuredPlugs(PlugList plugs, ErrorList errors)
{
    private readonly ImmutableDictionary<string, BenchReading>.Builder _readings =
        ImmutableDictionary.CreateBuilder<string, BenchReading>();

    /// <summary>The readings by the name of the plug.</summary>
    public ImmutableDictionary<string, BenchReading> Readings => _readings.ToImmutable();

    /// <summary>The plug that is meant; null, with an error, where none is.</summary>
    public PlugPlace? Find(string typed, Spot at)
    {
        if (plugs.Find(typed, out var problem) is { } plug)
            return plug;
        errors.Add(at, $"'{ErrorList.Quote(typed)}': {problem}", typed, "a plug of the rig, or the load on it");
        return null;
    }

    /// <summary>Adds what was measured as volts.</summary>
    public void AddVolts(PlugPlace plug, BenchMeasure measure, string typed, Spot at)
    {
        if (!DisplayedValueReader.TryRead<Volt>(typed, out var value, out var problem))
            errors.Expected(at, Word(measure), "volts as the meter showed them, such as -9.02 V", typed, problem);
        else if (measure == BenchMeasure.Open)
            Add(plug, at, measure, new BenchReading { Open = value });
        else
            Add(plug, at, measure, new BenchReading { Loaded = value });
    }

    /// <summary>Adds what was measured as a current. Which way round the meter was says nothing of a draw.</summary>
    public void AddAmps(PlugPlace plug, string typed, Spot at)
    {
        if (!DisplayedValueReader.TryRead<Ampere>(typed, out var value, out var problem))
            errors.Expected(at, Word(BenchMeasure.Draw), "a current as the meter showed it, such as 212 mA", typed, problem);
        else
            Add(plug, at, BenchMeasure.Draw, new BenchReading
            {
                Draw = value with { Value = new Amps(Math.Abs(value.Value.Value)), IsSigned = false },
            });
    }

    private void Add(PlugPlace plug, Spot at, BenchMeasure measure, BenchReading reading)
    {
        var before = _readings.GetValueOrDefault(plug.Name) ?? new BenchReading();
        var isThere = measure switch
        {
            BenchMeasure.Open => before.Open is not null,
            BenchMeasure.Loaded => before.Loaded is not null,
            _ => before.Draw is not null,
        };
        if (isThere)
            errors.Add(at, $"'{plug.Name}' ({plug.Load.Id}) has a reading {Word(measure)} already; strike one of them out");
        else
            _readings[plug.Name] = before.With(reading);
    }

    private static string Word(BenchMeasure measure) => ReadingColumns.NameOf(measure);
}
