using System.Collections;
using System.Reflection;
using CsCheck;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Keys;

namespace Loadmark.Files.Tests;

/// <summary>
/// A new field is lost nowhere in silence: the generator has to make it, and then every round trip, merge and table that is tested with
/// generated rigs loses it aloud where its row is missing.
/// </summary>
public sealed class EveryFieldTests
{
    /// <summary>What generated rigs do not have: what the library says comes to them where it is tested (<see cref="FromLibraryTests"/>).</summary>
    private static readonly string[] Elsewhere = ["Load.FromLibrary", "Supply.FromLibrary"];

    [Fact]
    public void Generated_rigs_have_every_property_in_more_than_one_way()
    {
        var seen = new Dictionary<string, HashSet<object>>(StringComparer.Ordinal);
        RigGen.Rigs.Sample(rig => Note(rig, seen), iter: 400, threads: 1);

        var all = Types(typeof(Rig), []).SelectMany(static type => Properties(type).Select(property => NameOf(type, property)));
        Assert.Equal(
            all.Except(Elsewhere).Order(StringComparer.Ordinal),
            seen.Where(static one => one.Value.Count > 1).Select(static one => one.Key).Order(StringComparer.Ordinal));

        // The walk goes all the way down.
        Assert.All(
            ["Bank.Total", "Lead.Wire", "Load.Priority", "Outlet.NoLoad", "SupplyTotal.Watts", "TimedCurrent.Duration", "Wire.Gauge"],
            name => Assert.Contains(name, seen.Keys));
    }

    [Fact]
    public void Every_property_of_gear_has_a_row() => RigGen.Rigs.Sample(
        rig =>
        {
            foreach (var load in rig.Loads)
                Assert.Equal(load, Copy(load, new Load { Id = load.Id }, LoadKeys.Table));
            foreach (var supply in rig.Supplies)
            {
                var without = new Supply { Id = supply.Id, Outlets = supply.Outlets, Banks = supply.Banks };
                Assert.Equal(supply, Copy(supply, without, SupplyKeys.Table));
                foreach (var outlet in supply.Outlets)
                    Assert.Equal(outlet, Copy(outlet, new Outlet { Id = outlet.Id, Label = NameplateReader.Read("") }, OutletKeys.Table));
            }

            foreach (var lead in rig.Leads)
                Assert.Equal(lead, Copy(lead, new Lead { Id = lead.Id }, LeadKeys.Table));
            var copy = Copy(rig, new Rig { Name = rig.Name }, RigKeys.Rig);
            Assert.Equal((rig.Mains, rig.Headroom), (copy.Mains, copy.Headroom));
        },
        iter: 200);

    private static T Copy<T>(T from, T to, FieldTable<T> table) =>
        table.Fields.Aggregate(to, (thing, field) => field.With(thing, field.ValueOf(from)));

    /// <summary>Notes each value of each property of a thing and of what is below it.</summary>
    private static void Note(object thing, Dictionary<string, HashSet<object>> seen)
    {
        foreach (var property in Properties(thing.GetType()))
        {
            var value = property.GetValue(thing);
            var name = NameOf(thing.GetType(), property);
            if (!seen.TryGetValue(name, out var values))
                seen.Add(name, values = []);
            values.Add(value ?? "nothing");
            var parts = value is IEnumerable list and not string ? list.Cast<object?>() : [value];
            foreach (var part in parts.OfType<object>().Where(static part => IsOfRig(part.GetType())))
                Note(part, seen);
        }
    }

    /// <summary>A type of the rig with those of its properties and of the elements of its lists.</summary>
    private static HashSet<Type> Types(Type type, HashSet<Type> found)
    {
        if (!found.Add(type))
            return found;
        foreach (var property in Properties(type))
        {
            var inner = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
            inner = inner.IsGenericType && inner.GetGenericTypeDefinition() == typeof(ValueList<>) ? inner.GetGenericArguments()[0] : inner;
            if (IsOfRig(inner))
                Types(inner, found);
        }

        return found;
    }

    /// <summary>The properties that hold something, unlike those that are reckoned from others.</summary>
    private static IEnumerable<PropertyInfo> Properties(Type type) =>
        type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(one => type.GetField($"<{one.Name}>k__BackingField", BindingFlags.NonPublic | BindingFlags.Instance) is not null);

    private static bool IsOfRig(Type type) =>
        type is { IsEnum: false, IsGenericType: false } && (type.Namespace == typeof(Rig).Namespace || type.Namespace == typeof(Plug).Namespace);

    private static string NameOf(Type type, PropertyInfo property) => $"{type.Name}.{property.Name}";
}
