using System.Globalization;
using Loadmark.Storage.Entities;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace Loadmark.Storage.Seals;

/// <summary>Computes the seals of the rows that an entity type stands for, from the values that the program has at hand.</summary>
internal sealed class SealedType
{
    private const string Annotation = "Loadmark:Seal";

    private readonly IProperty[] _properties;

    private SealedType(IEntityType type)
    {
        Table = type.GetTableName()!;
        _properties = [.. type.GetProperties()
            .Where(static property => property.Name != nameof(SealedRow.Seal))
            .OrderBy(static property => property.GetColumnName(), StringComparer.Ordinal)];
    }

    /// <summary>The table.</summary>
    public string Table { get; }

    /// <summary>The one of an entity type.</summary>
    public static SealedType Of(IEntityType type) =>
        type.GetOrAddRuntimeAnnotationValue(Annotation, static type => new SealedType(type!), type);

    /// <summary>The seal that a row should have.</summary>
    /// <exception cref="NotSupportedException">A property has a type of which nobody has said how SQLite keeps it.</exception>
    public long SealOf(SealedRow row)
    {
        var hash = new SealHash();
        hash.Begin(Table);
        foreach (var property in _properties)
            Add(hash, property.GetGetter().GetClrValue(row));
        return hash.End();
    }

    /// <summary>Where a row is, in words for the user.</summary>
    public string PlaceOf(SealedRow row) => RowPlace.Of(
        Table,
        column => Array.Find(_properties, property => property.GetColumnName() == column) is { } found
            ? Convert.ToString(found.GetGetter().GetClrValue(row), CultureInfo.InvariantCulture)
            : null);

    /// <summary>In the form in which the provider for SQLite writes it, which a test compares with what SQLite then has.</summary>
    private static void Add(SealHash hash, object? value)
    {
        switch (value)
        {
            case null:
                hash.AddNull();
                break;
            case string text:
                hash.AddText(text);
                break;
            case byte[] bytes:
                hash.AddBytes(bytes);
                break;
            case Guid id:
                hash.AddText(id.ToString("D").ToUpperInvariant());
                break;
            case decimal figure:
                hash.AddText(figure.ToString("0.0###########################", CultureInfo.InvariantCulture));
                break;
            case long or int or bool or Enum:
                hash.Add(Convert.ToInt64(value, CultureInfo.InvariantCulture));
                break;
            default:
                throw new NotSupportedException($"There is no seal of a {value.GetType()}.");
        }
    }
}
