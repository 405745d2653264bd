using Loadmark.Storage.Entities;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Loadmark.Storage.Tests.Schemas;

/// <summary>A later one that makes a table anew, which SQLite does by dropping the old; rows that refer to it are to stay.</summary>
[DbContext(typeof(StorageContext))]
[Migration("29990101000000_Tomorrow")]
internal sealed class Tomorrow : Storage.Migrations.Acceptances
{
    protected override void Up(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.AddColumn<string>("Owner", "Rigs", "TEXT", nullable: false, defaultValue: "nobody");
        migrationBuilder.AlterColumn<string>("Name", "Rigs", "TEXT", nullable: true, oldClrType: typeof(string), oldType: "TEXT");
    }

    protected override void BuildTargetModel(ModelBuilder modelBuilder)
    {
        base.BuildTargetModel(modelBuilder);
        modelBuilder.Entity(typeof(RigRow).FullName!, rig =>
        {
            rig.Property<string>("Owner").IsRequired().HasColumnType("TEXT");
            rig.Property<string>("Name").IsRequired(false);
        });
    }
}
