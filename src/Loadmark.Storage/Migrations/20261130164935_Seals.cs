using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Loadmark.Storage.Migrations
{
    /// <inheritdoc />
    internal partial class Seals : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<long>(
                name: "Seal",
                table: "Rigs",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L)
                .Annotation("Relational:ColumnOrder", 8);

            migrationBuilder.AddColumn<long>(
                name: "Seal",
                table: "GearUses",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "Seal",
                table: "GearReadings",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "Seal",
                table: "GearDecisions",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "Seal",
                table: "GearChanges",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "Seal",
                table: "Gear",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "Seal",
                table: "Edits",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "Seal",
                table: "Counts",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.CreateTable(
                name: "Totals",
                columns: table => new
                {
                    Table = table.Column<string>(type: "TEXT", nullable: false),
                    Rows = table.Column<long>(type: "INTEGER", nullable: false),
                    Sum = table.Column<long>(type: "INTEGER", nullable: false),
                    Seal = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Totals", x => x.Table);
                });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Totals");

            migrationBuilder.DropColumn(
                name: "Seal",
                table: "Rigs");

            migrationBuilder.DropColumn(
                name: "Seal",
                table: "GearUses");

            migrationBuilder.DropColumn(
                name: "Seal",
                table: "GearReadings");

            migrationBuilder.DropColumn(
                name: "Seal",
                table: "GearDecisions");

            migrationBuilder.DropColumn(
                name: "Seal",
                table: "GearChanges");

            migrationBuilder.DropColumn(
                name: "Seal",
                table: "Gear");

            migrationBuilder.DropColumn(
                name: "Seal",
                table: "Edits");

            migrationBuilder.DropColumn(
                name: "Seal",
                table: "Counts");
        }
    }
}
